// Where labels stand in the lesson, on both sides, with every rule, in several sizes; and what is said where
// one finds no room. Laid out without drawing.
#include <catch2/catch.hpp>

#include "geometry/plan/solve.h"
#include "models/coils/coil_library.h"
#include "tests/support/labels_told_apart.h"
#include "tests/support/round_head.h"
#include "tests/support/unseen_stage.h"
#include "viewer/teach/lesson.h"

using namespace scalpmark;
using namespace scalpmark::viewer;

namespace {

geometry::Case case_of(geometry::Side side, const std::string& coil, geometry::MarkRule laid_by) {
  geometry::Case c;
  c.side = side;
  c.coil.model = models::coil(coil);
  c.coil.centre_to_edge_mm = c.coil.model.centre_to_edge_mm;
  c.coil.laid_by = laid_by;
  return c;
}

struct Setup {
  geometry::Side side;
  std::string coil;
  geometry::MarkRule laid_by;
};
const std::vector<Setup>& setups() {
  static const std::vector<Setup> all{{geometry::Side::left, "figure-8-70", geometry::MarkRule::drop},
                                      {geometry::Side::right, "round-100", geometry::MarkRule::nearest},
                                      {geometry::Side::right, "angled-8-150", geometry::MarkRule::tape}};
  return all;
}

bool has_label(const Stage& stage, const std::string& begins) {
  return std::any_of(stage.labels().begin(), stage.labels().end(),
                     [&](const PlacedLabel& l) { return l.wish.text.starts_with(begins); });
}

bool is_said(const Stage& stage, const std::string& words) {
  return std::any_of(stage.captions().begin(), stage.captions().end(),
                     [&](const Caption& c) { return c.text.find(words) != std::string::npos; });
}

}  // namespace

TEST_CASE(
    "in every step of the lesson each label is nearest to its own symbol, on both sides and in all sizes") {
  for (const Setup& setup : setups()) {
    const geometry::Case c = case_of(setup.side, setup.coil, setup.laid_by);
    const geometry::Plan plan = geometry::solve(tests::coarse_lop(), c);
    for (const auto& [width, height] : {std::pair(960, 620), std::pair(1280, 800), std::pair(1920, 1080)}) {
      tests::UnseenStage unseen(width, height);
      for (const LessonStep& step : lesson(c, plan)) {
        unseen.stage().show(tests::coarse_lop(), c, plan, step.shown);
        if (step.close)
          unseen.look_at(gaze(step.view, plan.axes, placement_shown(plan, step.shown)), step.close->at,
                         step.close->across_mm);
        else
          unseen.look(step.view);
        INFO(step.title << ", " << setup.coil << ", " << width << " wide");
        CHECK_THAT(tests::mistaken_labels(unseen.stage()), Catch::Equals(""));
        CHECK_FALSE(unseen.stage().labels().empty());
      }
    }
  }
}

TEST_CASE(
    "from everywhere and however small, site and chosen edge mark have their labels or it is said why not") {
  for (const Setup& setup : setups()) {
    const geometry::Case c = case_of(setup.side, setup.coil, setup.laid_by);
    const geometry::Plan plan = geometry::solve(tests::coarse_lop(), c);
    for (const auto& [width, height] : {std::pair(640, 480), std::pair(960, 620), std::pair(1920, 1080)}) {
      tests::UnseenStage unseen(width, height);
      for (const bool with_all : {false, true}) {
        Shown shown;
        if (with_all) shown.things.insert(Thing::alternatives);
        unseen.stage().show(tests::coarse_lop(), c, plan, shown);
        for (const View view : all_views()) {
          unseen.look(view);
          const Stage& stage = unseen.stage();
          INFO(name_of(view) << ", " << setup.coil << ", " << width << " wide");
          CHECK_THAT(tests::mistaken_labels(stage), Catch::Equals(""));
          CHECK((has_label(stage, "Treatment site") || is_said(stage, "reatment site")));
          CHECK((has_label(stage, "Edge mark") || is_said(stage, "edge mark, edge") ||
                 is_said(stage, "Edge mark, ")));
        }
      }
    }
  }
}

TEST_CASE("nothing goes round a disc or a dot, and the ring is the hotspot's alone") {
  for (const Setup& setup : setups()) {
    const geometry::Case c = case_of(setup.side, setup.coil, setup.laid_by);
    const geometry::Plan plan = geometry::solve(tests::coarse_lop(), c);
    for (const CoilOn on : {CoilOn::start, CoilOn::hotspot, CoilOn::treatment}) {
      Shown shown;
      shown.coil_on = on;
      tests::UnseenStage unseen(1280, 800);
      unseen.stage().show(tests::coarse_lop(), c, plan, shown);
      unseen.look(View::square_on);
      int rings = 0;
      for (const SeenMark& ring : unseen.stage().marks()) {
        if (ring.shape != Shape::ring) continue;
        ++rings;
        CHECK(ring.thing == Thing::hotspot);
        for (const SeenMark& other : unseen.stage().marks())
          if (other.shape == Shape::disc || other.shape == Shape::small_disc || other.shape == Shape::dot ||
              other.shape == Shape::hollow_disc || other.shape == Shape::small_hollow_disc) {
            INFO(other.name);
            CHECK((other.at - ring.at).norm() > 1.9);
          }
      }
      CHECK(rings == 1);
      const auto marks = unseen.stage().marks();
      for (const SeenMark& hollow : marks)
        for (const SeenMark& other : marks) {
          if (hollow.shape != Shape::hollow_disc || &hollow == &other) continue;
          if (other.shape != Shape::disc && other.shape != Shape::small_hollow_disc) continue;
          INFO(hollow.name << " round " << other.name);
          CHECK((other.at - hollow.at).norm() > 0.9);  // no nearer than a pulse that counts as elsewhere
        }
    }
  }
}
