// What stands under the numbers keeps off what stands under it, in windows of any size and in either
// language.
#include <algorithm>
#include <catch2/catch.hpp>
#include <optional>
#include <string>

#include "tests/support/laid_on_lopsided.h"
#include "tests/support/unseen_stage.h"
#include "viewer/stage/scene/field_shown.h"
#include "viewer/stage/things/things.h"
#include "viewer/words/in_language.h"

using namespace scalpmark;
using namespace scalpmark::viewer;

namespace {

/// Drawn by one rule, laid by the other, with the field: all that is ever said under the numbers but the
/// brain.
Scene with_much_to_say(geometry::Side side) {
  tests::LaidOnLopsided laid = tests::laid_on_lopsided(side, "figure-8-70");
  laid.the_case.treatment.drawn_by = geometry::MarkRule::drop;
  laid.plan = geometry::solve(laid.head, laid.the_case, geometry::TapeDistances::left_out);
  Shown shown;
  shown.things.insert(
      {Thing::coil, Thing::treatment, Thing::field, Thing::numbers, Thing::legend, Thing::wanted});
  shown.field = field_under(laid.head, nullptr, laid.the_case.coil.model, laid.plan.treatment);
  return show(laid.head, laid.the_case, laid.plan, shown);
}

const Caption* caption_of(const Stage& stage, const std::string& beginning) {
  for (const Caption& caption : stage.captions())
    if (caption.text.starts_with(beginning)) return &caption;
  return nullptr;
}

}  // namespace

TEST_CASE(
    "remarks end above the caution in the smallest window, in either language, headings and whose field stay") {
  for (const geometry::Side side : {geometry::Side::left, geometry::Side::right})
    for (const std::string language : {"en", "de"}) {
      const InLanguage texts(language);
      const Scene scene = with_much_to_say(side);
      const std::vector<Remark>& remarks = scene.around.remarks;
      REQUIRE(remarks.size() == 5);
      for (const auto& [width, height] : {std::pair{596, 415}, {596, 515}, {916, 595}, {1556, 975}}) {
        tests::UnseenStage unseen(width, height);
        unseen.stage().show(scene);
        unseen.look(View::square_on);
        CAPTURE(side, language, width, height);
        const Caption* said = caption_of(unseen.stage(), remarks.front().text.substr(0, 12));
        REQUIRE(said);
        CAPTURE(said->text);
        CHECK(said->box.bottom <= height);
        for (const Caption& other : unseen.stage().captions())
          if (&other != said) {
            INFO(other.text);
            CHECK_FALSE(said->box.overlaps(other.box));
          }
        for (const Remark& remark : remarks) {
          CAPTURE(remark.text);
          const bool is_there = said->text.find(remark.text) != std::string::npos;
          if (remark.weight != Remark::Weight::plain || height > 900) CHECK(is_there);
        }
        // What is left out is left out whole, and that something is missing is seen.
        const bool all = std::all_of(remarks.begin(), remarks.end(), [&](const Remark& r) {
          return said->text.find(r.text) != std::string::npos;
        });
        CHECK(all == (said->text.find("\u2026") == std::string::npos));
        if (language == "de" && height == 415) CHECK_FALSE(all);
      }
    }
}
