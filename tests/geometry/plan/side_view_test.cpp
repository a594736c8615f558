#include "geometry/plan/side_view.h"

#include <catch2/catch.hpp>
#include <cmath>

#include "geometry/plan/solve.h"
#include "tests/support/coils.h"
#include "tests/support/heads.h"

using namespace scalpmark;
using namespace scalpmark::geometry;

// A flat coil tangent to a sphere of radius R at its centre, its edge at distance d along it: the drop mark
// lies straight under the edge, the nearest on the line to the sphere's middle, the tape mark at an arc of d
// (elementary geometry).
TEST_CASE("from beside the coil a sphere shows its circle, and each rule's mark where the closed form has it",
          "[slow]") {
  constexpr double R = 90, d = 60;
  const Head head = tests::sphere_head(R, 6);
  Case c;
  c.coil.model = tests::flat_coil();
  c.coil.centre_to_edge_mm = d;
  for (const Side side : {Side::left, Side::right}) {
    c.side = side;
    const Plan plan = solve(head, c);
    const SideView view = side_view(head, c.coil.model, plan.treatment);
    REQUIRE(view.skin.size() > 20);
    CHECK(view.skin.front().x() < -50);
    CHECK(view.skin.back().x() > 80);
    const Eigen::Vector2d middle(0, -R);
    for (const auto& p : view.skin) CHECK((p - middle).norm() == Approx(R).margin(0.15));
    CHECK(view.face_mm == Approx(plan.treatment.lift_mm));
    CHECK(view.edge.x() == Approx(d).margin(0.01));
    CHECK(view.back_mm < 0);
    const double above = plan.treatment.lift_mm;
    CHECK(view.edge.y() == Approx(above).margin(0.01));
    REQUIRE(view.drop);
    CHECK(view.drop->x() == Approx(d).margin(0.2));
    CHECK(view.drop->y() == Approx(std::sqrt(R * R - d * d) - R).margin(0.2));
    REQUIRE(view.tape);
    CHECK(view.tape->x() == Approx(R * std::sin(d / R)).margin(0.2));
    CHECK(view.tape->y() == Approx(R * std::cos(d / R) - R).margin(0.2));
    REQUIRE(view.nearest);
    const double angle = std::atan2(d, R + above);
    CHECK(view.nearest->x() == Approx(R * std::sin(angle)).margin(0.3));
    CHECK(view.nearest->y() == Approx(R * std::cos(angle) - R).margin(0.3));
  }
}
