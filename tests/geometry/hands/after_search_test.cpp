#include "geometry/hands/after_search.h"

#include <algorithm>
#include <catch2/catch.hpp>

#include "geometry/base/error.h"
#include "geometry/hands/what_if.h"
#include "geometry/plan/solve.h"
#include "tests/support/coils.h"
#include "tests/support/heads.h"

using namespace scalpmark;
using namespace scalpmark::geometry;

// A grid of 1 cm around a wrong start: the nearest of its spots to a place that lies a whole step off is that
// very place, but for what the head curves over a centimetre; half a step off half a step stays (elementary
// geometry).
TEST_CASE("the twitch search makes up for whole steps of the grid, and leaves what lies between", "[slow]") {
  const Head head = tests::sphere_head(90, 6);
  Case c;
  c.coil.model = tests::flat_coil();
  c.search.grid_on = GridOn::pulse_points;
  use_one_rule(c, MarkRule::tape);
  const Plan plan = solve(head, c);
  const auto off = [&](double forward_mm, double inward_mm) {
    Placement start = plan.start;
    start.pulse += forward_mm * start.forward + inward_mm * start.inward;
    return after_search(plan, start);
  };
  CHECK(off(0, 0).left_mm == Approx(0).margin(1e-9));
  const AfterSearch step = off(10, 0);
  CHECK(step.row == -1);  // of a grid too far forward the rear spot answers
  CHECK(step.column == 0);
  CHECK(step.left_mm < 1.5);
  CHECK(off(5, 0).left_mm == Approx(5).margin(0.8));
  CHECK(off(3, 0).left_mm == Approx(3).margin(0.2));
  const AfterSearch inward = off(0, 10);
  CHECK(inward.column == 1);  // outward
  CHECK(inward.left_mm < 1.5);
  // Further off than the grid reaches, the rest stays.
  CHECK(off(25, 0).left_mm == Approx(15).margin(2.5));
}

namespace {

struct ByHandAnew {
  Eigen::Vector3d site = Eigen::Vector3d::Zero();
  double told_apart_mm = 1e9;  ///< by how much the second nearest spot is further off
};

/// The same by the whole procedure anew: the grid as it lies around a start whose lengths were misread, the
/// spot of it that is nearest to where the hotspot really is, and the site measured from there.
ByHandAnew site_by_hand(const Head& head, const Case& misread, const Plan& plan, bool searched) {
  Case wrong = misread;
  double told_apart_mm = 1e9;
  if (searched) {
    const Plan grid = solve(head, wrong, TapeDistances::left_out);
    double nearest_mm = 1e9;
    for (const GridSpot& spot : grid.grid) {
      const double mm = (spot.placement.pulse - plan.hotspot.pulse).norm();
      if (mm >= nearest_mm) {
        told_apart_mm = std::min(told_apart_mm, mm - nearest_mm);
        continue;
      }
      told_apart_mm = nearest_mm - mm;
      nearest_mm = mm;
      take_hotspot(wrong, {spot.row, spot.column});
    }
  }
  return {solve(head, wrong, TapeDistances::left_out).treatment.wanted, told_apart_mm};
}

}  // namespace

TEST_CASE("how much of a wrong start the search takes back is what the procedure done again leaves",
          "[slow]") {
  const Head head = tests::lopsided_head(5);
  int told_apart = 0;
  for (const Side side : {Side::left, Side::right}) {
    Case c;
    c.side = side;
    c.coil.model = tests::flat_coil();
    const Plan plan = solve(head, c, TapeDistances::left_out);
    for (const auto& [lateral_mm, anterior_mm] :
         {std::pair(10.0, 0.0), std::pair(-8.0, 0.0), std::pair(3.0, 0.0), std::pair(0.0, 9.0),
          std::pair(7.0, -6.5), std::pair(14.0, 2.0)}) {
      INFO(lateral_mm << " and " << anterior_mm << (side == Side::left ? ", left" : ", right"));
      Case misread = c;
      misread.search.lateral_mm += lateral_mm;
      misread.search.anterior_mm += anterior_mm;
      const Placement start = solve(head, misread, TapeDistances::left_out).start;
      const SiteAfterSearch s = site_after_search(head, c, plan, start);
      const auto flat = [&](const Eigen::Vector3d& site) {
        const Eigen::Vector3d by = site - plan.treatment.wanted;
        return Eigen::Vector2d(by.dot(plan.treatment.forward), -by.dot(plan.treatment.inward));
      };
      // To first order: the grid is carried along as it is. Where two spots lie nearly alike, either is
      // found.
      constexpr double alike_mm = 3;
      const ByHandAnew anew = site_by_hand(head, misread, plan, true);
      if (anew.told_apart_mm > alike_mm) {
        CHECK((s.off_mm - flat(anew.site)).norm() < 1.5);
        ++told_apart;
      }
      CHECK((s.unsearched_mm - flat(site_by_hand(head, misread, plan, false).site)).norm() < 1.5);
      CHECK(s.same_spot == (std::abs(lateral_mm) < 5 && std::abs(anterior_mm) < 5));
      CHECK(s.off_mm.norm() < 8);
    }
  }
  CHECK(told_apart >= 7);  // of twelve
}

// To the side, along the tape from tragus to tragus, the vertex's error is the start's, and of a whole step
// of the grid the search takes back all across; forward the head is narrower off the midline, so that less
// than the whole reaches the start, and what is left is what that is short of a step.
TEST_CASE("of a vertex a step off, the search takes back the site's error across and along") {
  const Head head = tests::sphere_head(90, 6);
  Case c;
  c.coil.model = tests::flat_coil();
  c.search.grid_on = GridOn::pulse_points;
  use_one_rule(c, MarkRule::tape);
  const Plan plan = solve(head, c, TapeDistances::left_out);
  const auto after = [&](double forward_mm, double right_mm) {
    return site_after_search(head, c, plan, if_vertex_off(head, c, plan, forward_mm, right_mm).really);
  };
  const SiteAfterSearch aside = after(0, -10);
  CHECK(aside.unsearched_mm[1] > 8);
  CHECK(std::abs(aside.off_mm[1]) < 1);
  const SiteAfterSearch ahead = after(10, 0);
  CHECK(ahead.unsearched_mm[0] > 7);
  CHECK(std::abs(ahead.off_mm[0]) < 2.5);
  CHECK(ahead.off_mm.norm() < ahead.unsearched_mm.norm());
  // Half a step or less is not noticed at all.
  const SiteAfterSearch little = after(0, -4);
  CHECK(little.same_spot);
  CHECK(little.off_mm == little.unsearched_mm);
  Case landmark = c;
  landmark.treatment = {TreatmentRule::landmark, 50, "F3"};
  CHECK_THROWS_AS(site_after_search(head, landmark, plan, plan.start), GeometryError);
}
