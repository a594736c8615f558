#include "viewer/teach/field_steps.h"

#include <catch2/catch.hpp>

#include "geometry/field/moved_coil.h"
#include "geometry/plan/solve.h"
#include "models/coils/coil_library.h"
#include "tests/support/round_head.h"
#include "viewer/stage/scene/field_shown.h"
#include "viewer/teach/mistake.h"

using namespace scalpmark;
using namespace scalpmark::viewer;

namespace {

geometry::Case case_of(const std::string& coil, geometry::Side side = geometry::Side::left) {
  geometry::Case c;
  c.coil.model = models::coil(coil);
  c.side = side;
  return c;
}

std::string percent(double share) {
  return std::to_string(std::lround(100 * share)) + "\u00a0%";
}

}  // namespace

TEST_CASE("two steps tell by the field why the gap and the angle matter, as the model's, on both sides") {
  for (const geometry::Side side : {geometry::Side::left, geometry::Side::right}) {
    const geometry::Case c = case_of("figure-8-70", side);
    const geometry::Plan plan = geometry::solve(tests::ball(), c);
    const auto steps = field_steps(tests::ball(), c, plan);
    REQUIRE(steps.size() == 2);
    CHECK(steps[0].topic == LessonTopic::gap);
    CHECK(steps[1].topic == LessonTopic::across);
    for (const LessonStep& step : steps) {
      CHECK(step.shown.has(Thing::field));
      CHECK(step.shown.field);
      CHECK_THAT(step.caption, Catch::Contains("In a round model head"));
      CHECK(step.caption.back() == '.');
    }
    // What is left with 5 mm, from the two fields themselves.
    geometry::Placement lifted = plan.treatment;
    lifted.lift_mm += 5;
    const double left =
        field_under(tests::ball(), nullptr, c.coil.model, lifted)->map.strongest.strength() /
        field_under(tests::ball(), nullptr, c.coil.model, plan.treatment)->map.strongest.strength();
    CHECK_THAT(steps[0].caption, Catch::Contains("5 mm leave " + percent(left)));
    // A turn leaves its cosine: 71 % of 45 degrees.
    CHECK_THAT(steps[1].caption, Catch::Contains("45\u00b0 71\u00a0%"));
    CHECK_THAT(steps[1].title, Catch::Contains("45"));
  }
}

TEST_CASE("a round coil has no angle to explain, and a coil without windings neither") {
  const geometry::Case round = case_of("round-100");
  const auto steps = field_steps(tests::ball(), round, geometry::solve(tests::ball(), round));
  REQUIRE(steps.size() == 1);
  CHECK(steps[0].topic == LessonTopic::gap);
  geometry::Case none = case_of("figure-8-70");
  none.coil.model.windings.clear();
  CHECK(field_steps(tests::ball(), none, geometry::solve(tests::ball(), none)).empty());
}

TEST_CASE("what goes wrong is told by the field that is left at the wanted place") {
  const geometry::Case c = case_of("figure-8-70");
  const geometry::Plan plan = geometry::solve(tests::ball(), c);
  const auto left = [&](const Mistake& mistake) {
    return outcome_of(tests::ball(), c, plan, {mistake}).field_left;
  };
  REQUIRE(left(StandsOff{5, {}}));
  // The kernel's own ratios of the same coil.
  const auto field = field_under(tests::ball(), nullptr, c.coil.model, plan.treatment);
  REQUIRE(field);
  const auto ratios = geometry::moved_ratios(tests::ball().skin(), c.coil.model, *field);
  const auto ratio = [&](geometry::CoilMoved how, double by) {
    for (const auto& r : ratios)
      if (r.moved == how && r.by == by) return r.ratio;
    return 0.0;
  };
  CHECK(*left(StandsOff{5, {}}) == Approx(ratio(geometry::CoilMoved::gap, 5)).epsilon(1e-3));
  CHECK(*left(StandsOff{0, {10, 0}}) == Approx(ratio(geometry::CoilMoved::roll, 10)).epsilon(1e-3));
  CHECK(*left(CoilTurned{45, true}) == Approx(std::cos(M_PI / 4)).margin(0.01));
  // About its edge mark the centre goes off as well, which costs more.
  CHECK(*left(CoilTurned{45, false}) < *left(CoilTurned{45, true}));
  CHECK(*left(OtherRule{geometry::MarkRule::tape}) < 1);
}
