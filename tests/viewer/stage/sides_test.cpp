// The side that is meant, wherever one is shown: a treatment landmark can lie across the head from the
// search.
#include <algorithm>
#include <catch2/catch.hpp>

#include "geometry/head/landmark_names.h"
#include "geometry/plan/solve.h"
#include "geometry/plan/treatment.h"
#include "models/coils/coil_library.h"
#include "tests/support/heads.h"
#include "viewer/stage/things/things.h"
#include "viewer/teach/lesson.h"

using namespace scalpmark;
using namespace scalpmark::viewer;
using geometry::Side;

namespace {

bool has_word(const std::string& text, const std::string& word) {
  for (size_t at = text.find(word); at != std::string::npos; at = text.find(word, at + 1)) {
    const bool begins = at == 0 || !std::isalpha(static_cast<unsigned char>(text[at - 1]));
    const size_t end = at + word.size();
    if (begins && (end == text.size() || !std::isalpha(static_cast<unsigned char>(text[end])))) return true;
  }
  return false;
}

}  // namespace

TEST_CASE("every landmark of the 10-5 system on either side: what is said of sides is so") {
  const geometry::Head head = tests::lopsided_head(4);
  const auto labels = geometry::landmark_labels(geometry::LandmarkSystem::ten_five);
  int across = 0, tried = 0;
  for (const Side side : {Side::left, Side::right})
    for (const std::string& label : labels) {
      geometry::Case c;
      c.coil.model = models::coil("figure-8-70");
      c.side = side;
      c.treatment.rule = geometry::TreatmentRule::landmark;
      c.treatment.label = label;
      geometry::Plan plan;
      try {
        plan = geometry::solve(head, c, geometry::TapeDistances::left_out);
      } catch (const std::exception&) {
        continue;  // a coil over the face
      }
      ++tried;
      CAPTURE(label, side);
      const auto of_label = geometry::side_of_label(label);
      const Side treated = of_label.value_or(side);
      const bool other = treated != side;
      across += other ? 1 : 0;
      CHECK(geometry::side_of(plan.treatment) == treated);
      CHECK(geometry::side_of(plan.hotspot) == side);

      const Scene scene = show(head, c, plan, Shown{});
      REQUIRE(scene.around.title);
      const std::string& title = scene.around.title->about;
      if (other)
        CHECK(title.find(side == Side::left
                             ? "Search on the left side, treatment on the right"
                             : "Search on the right side, treatment on the left") != std::string::npos);
      else
        CHECK(title.find(side == Side::left ? "Left side stimulated" : "Right side stimulated") !=
              std::string::npos);

      const auto warned = std::count_if(plan.warnings.begin(), plan.warnings.end(), [](const auto& w) {
        const std::string text = geometry::english(w);
        return text.find("The search is on") == 0 && has_word(text, "left") && has_word(text, "right");
      });
      CHECK(warned == (other ? 1 : 0));
      for (const auto& a : plan.treatment_alternatives) {
        CHECK((a.rule != geometry::TreatmentRule::forward || !other));
        if (a.rule == geometry::TreatmentRule::landmark)
          CHECK(geometry::side_of_label(a.label.substr(0, a.label.find('-'))) == treated);
      }
      // The hand that twitches is across from the search, wherever the treatment is.
      for (const LessonStep& step : lesson(c, plan)) {
        if (step.topic == LessonTopic::twitch) {
          CHECK(has_word(step.caption, side == Side::left ? "right" : "left"));
          CHECK_FALSE(has_word(step.caption, side == Side::left ? "left" : "right"));
        }
        if (step.topic == LessonTopic::offset)
          CHECK(has_word(step.caption, side == Side::left ? "left" : "right"));
        if (step.topic == LessonTopic::mark_edge && of_label)
          CHECK(step.view == (treated == Side::left ? View::front_left : View::front_right));
      }
    }
  CHECK(tried > 400);
  CHECK(across > 150);
}
