#include <catch2/catch.hpp>
#include <cmath>

#include "geometry/hands/check.h"
#include "geometry/hands/find_by_tapes.h"
#include "geometry/plan/solve.h"
#include "tests/support/template_head.h"

using namespace scalpmark;
using namespace scalpmark::geometry;
using Eigen::Vector3d;

TEST_CASE("on the template head the plan's own marks check as good, and so do marks a pencil's width off") {
  const Head& head = tests::template_head();
  const Surface& skin = head.skin();
  for (const MarkRule rule : {MarkRule::tape, MarkRule::drop, MarkRule::nearest})
    for (const Side side : {Side::left, Side::right}) {
      const Case c = tests::template_case(rule, side);
      const Plan plan = solve(head, c);
      const Placement& t = plan.treatment;
      REQUIRE(t.edge_mark.by(rule));
      const Vector3d& edge = *t.edge_mark.by(rule);
      const Check exact = check_marks(head, c, plan, skin.closest(t.pulse), skin.closest(edge));
      INFO("rule " << static_cast<int>(rule) << ", side " << static_cast<int>(side));
      CHECK(exact.pulse_off_mm < 0.1);
      CHECK(std::abs(exact.angle_error_deg) < 0.1);
      for (const Vector3d& slip : {t.forward, t.inward, Vector3d(-t.forward), Vector3d(-t.inward)}) {
        const Check near =
            check_marks(head, c, plan, skin.closest(t.pulse + slip), skin.closest(edge + slip));
        CHECK(near.pulse_off_mm < 3);
        CHECK(near.verdict == Verdict::good);
        const Check far =
            check_marks(head, c, plan, skin.closest(t.pulse + 9 * slip), skin.closest(edge + 9 * slip));
        CHECK(far.pulse_off_mm > 5);
        CHECK(far.pulse_off_mm < 14);
      }
    }
}

TEST_CASE("on the template head the sheet's tape distances find each mark again within 0.1 mm") {
  const Head& head = tests::template_head();
  const Plan plan = solve(head, tests::template_case(MarkRule::tape, Side::left));
  const auto again = [&](const TapeFrom& from, const Vector3d& at) {
    const auto places =
        find_by_tapes(head, {from.vertex_mm, from.nasion_mm, from.left_tragus_mm, from.right_tragus_mm});
    REQUIRE(places.size() == 1);
    CHECK((head.skin().position(places.front().point) - at).norm() < 0.1);
    CHECK(places.front().worst_mm < 0.05);
  };
  again(*plan.hotspot.pulse_tape, plan.hotspot.pulse);
  again(*plan.hotspot.edge_mark_tape, *plan.hotspot.edge_mark.tape);
  again(*plan.treatment.pulse_tape, plan.treatment.pulse);
  again(*plan.treatment.edge_mark_tape, *plan.treatment.edge_mark.tape);
}
