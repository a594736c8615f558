// What the default errors of the hand amount to, against what others measured on people.
#include <catch2/catch.hpp>
#include <cmath>
#include <random>

#include "geometry/hands/tolerance.h"
#include "geometry/head/landmarks.h"
#include "geometry/plan/solve.h"
#include "geometry/surface/triangle_math.h"
#include "models/coils/coil_library.h"
#include "models/generic/generic_head.h"

using namespace scalpmark;
using namespace scalpmark::geometry;
using Eigen::Vector3d;

namespace {

const Head& head() {
  return models::generic_head();
}

/// Average distance from the planned treatment site, first order, of the default case.
double average_mm(const HandErrors& errors) {
  Case c;
  c.coil.model = models::coil("figure-8-70");
  const Plan plan = solve(head(), c, TapeDistances::left_out);
  return tolerance(head(), c, plan, errors, {.placements = 0, .compare_ways = false}).first_order.mean_mm;
}

/// Somebody lays the coil again on marks that were made right.
HandErrors laid_again(HandErrors errors) {
  errors.fiducial_mm = errors.tape_mm = 0;
  return errors;
}

}  // namespace

// Jurcak et al. 2005, NeuroImage 26:1184-1192: over 17 adults a 10-20 position spread by 7.7 mm when a
// computer placed it and by 9.0 mm by hand (one standard deviation). What the hand adds is the root of the
// difference of the squares, 4.7 mm. The default error of feeling for the four points was chosen to meet this
// (hand_errors.h): this holds it there.
TEST_CASE("10-20 positions made by hand with the default errors spread by what the hand was found to add") {
  const HandErrors errors;
  const auto planned = landmarks(head(), LandmarkSystem::ten_twenty);
  const Surface& skin = head().skin();
  std::mt19937 random(1);
  std::normal_distribution<double> normal;
  double squares = 0;
  int count = 0;
  for (int round = 0; round < 40; ++round) {
    SkinFiducials felt = head().fiducials();
    const auto feel = [&](SurfacePoint& at, const Vector3d& across) {
      const Vector3d n = skin.smooth_normal(at);
      const double up = errors.fiducial_mm * normal(random), side = errors.fiducial_mm * normal(random);
      at = skin.closest(skin.position(at) + up * tangent_part(head().axes().up, n) +
                        side * tangent_part(across, n));
    };
    feel(felt.nasion, head().axes().right);
    feel(felt.inion, head().axes().right);
    feel(felt.left_tragus, head().axes().front);
    feel(felt.right_tragus, head().axes().front);
    const auto made = landmarks(Head(skin, felt, head().vertex()), LandmarkSystem::ten_twenty);
    for (size_t i = 0; i < made.size(); ++i) {
      if (made[i].name == "Nz" || made[i].name == "Iz") continue;
      squares += (made[i].at - planned[i].at).squaredNorm();
      ++count;
    }
  }
  // Each position is a share of two tapes, whole and part both read.
  const double spread = std::sqrt(squares / count + 2 * 1.25 * errors.tape_mm * errors.tape_mm);
  CHECK(spread == Approx(std::sqrt(9.0 * 9.0 - 7.7 * 7.7)).epsilon(0.2));
}

// Caulfield et al. 2022, Brain Stimul 15:1192-1205: with a cap and marks and no tracking, the pulse was 10.66
// mm off on average, the angle 6.0 degrees (42 adults, 3408 distances).
//
// What it takes to get there, plainly: the default errors alone do not. Angle and tilt are from that same
// paper, so they are no independent evidence; the tape's error is practice, the four points' from Jurcak et
// al. 2005; pencil marks, the cap, the mixing of rules and the look past the coil are our guesses.
TEST_CASE("the defaults stay below the published 10.66 mm, and within a third of it") {
  constexpr double published_mm = 10.66;
  const double ours = average_mm({});
  CAPTURE(ours);
  CHECK(ours < published_mm);
  CHECK(ours > 0.67 * published_mm);
  // Marks on the skin, no cap, one rule kept to and looked at straight: what is left is the pencil.
  HandErrors errors = laid_again({});
  errors.cap_forward_mm = errors.cap_side_mm = errors.cap_turn_deg = 0;
  errors.other_rule_percent = errors.sight_deg = 0;
  CHECK(average_mm(errors) < 0.6 * published_mm);
}
