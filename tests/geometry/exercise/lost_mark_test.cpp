#include "geometry/exercise/lost_mark.h"

#include <catch2/catch.hpp>
#include <cmath>

#include "geometry/exercise/score.h"
#include "tests/support/coils.h"
#include "tests/support/heads.h"
#include "tests/support/round_head.h"
#include "tests/support/trainee.h"

using namespace scalpmark::geometry;
using namespace scalpmark::tests;
using Eigen::Vector3d;

namespace {

TapeEnds own_ends() {
  const SkinFiducials& f = ball().fiducials();
  return {ball().vertex(), f.nasion, f.left_tragus, f.right_tragus};
}

}  // namespace

TEST_CASE("a lost mark's note says the great circles of a sphere, to the whole millimetre") {
  const SurfacePoint at = ball().skin().closest(90 * Vector3d(-0.5, 0.5, 0.7).normalized());
  const LostMark mark = lost_mark(ball().skin(), own_ends(), at);
  const Vector3d there = ball().skin().position(at);
  CHECK(mark.exact_mm[0] == Approx(arc_mm(there, {0, 0, 90})).margin(0.1));
  CHECK(mark.exact_mm[1] == Approx(arc_mm(there, {0, 90, 0})).margin(0.1));
  CHECK(mark.exact_mm[2] == Approx(arc_mm(there, {-90, 0, 0})).margin(0.1));
  CHECK(mark.exact_mm[3] == Approx(arc_mm(there, {90, 0, 0})).margin(0.1));
  CHECK(*mark.written.nasion_mm == std::round(mark.exact_mm[1]));
}

TEST_CASE(
    "looked for from the right points, the mark is where it was, from others, where the tapes fit best") {
  const Surface& skin = ball().skin();
  const SurfacePoint at = skin.closest(90 * Vector3d(-0.5, 0.5, 0.7).normalized());
  const LostMark mark = lost_mark(skin, own_ends(), at);
  CHECK((skin.position(looked_for(skin, mark, own_ends())) - skin.position(at)).norm() < 0.02);
  TapeEnds ends = own_ends();
  ends[0] = skin.closest(Vector3d(0, 8, 90));
  ends[2] = skin.closest(Vector3d(-90, 4, 3));
  const Vector3d found = skin.position(looked_for(skin, mark, ends));
  // No place on a fine grid around it fits the four great circles better.
  const auto misfit = [&](const Vector3d& p) {
    double sum = 0;
    for (size_t i = 0; i < 4; ++i) {
      const double off = arc_mm(p, skin.position(ends[i])) - mark.exact_mm[i];
      sum += off * off;
    }
    return sum;
  };
  const Vector3d x = found.cross(Vector3d::UnitZ()).normalized(), y = found.cross(x).normalized();
  const double here = misfit(90 * found.normalized());
  for (double a = -3; a <= 3; a += 0.5)
    for (double b = -3; b <= 3; b += 0.5)
      if (std::hypot(a, b) > 0.9) CHECK(misfit(90 * (found + a * x + b * y).normalized()) > here);
  CHECK((found - skin.position(at)).norm() > 1);
}

TEST_CASE("a mark found again by points and a vertex that are off is paid for with them, not again") {
  Case c;
  c.coil.model = flat_coil();
  Exercise exercise = whole_exercise();
  exercise.number = 5;
  const RightAnswers answers = right_answers(ball(), c, exercise);
  const Score made =
      score(answers, attempt_with(answers, [](const Step& step, const Placed&) {
              const bool wrong = step.task == Task::vertex || step == Step{Task::four_points, 0};
              return wrong ? Slip{{6, 3}} : Slip{};
            }));
  const StepScore& found = made.steps.back();
  REQUIRE(found.step.task == Task::find_again);
  CHECK(found.own.mm < 0.05);
  CHECK(found.carried.mm > 1);
  CHECK(found.off.mm == Approx(found.carried.mm).margin(0.05));
}
