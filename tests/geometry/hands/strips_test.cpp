#include "geometry/hands/strips.h"

#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>

#include "geometry/base/angles.h"
#include "geometry/head/on_head.h"
#include "geometry/head/vertex.h"
#include "geometry/plan/solve.h"
#include "tests/support/coils.h"
#include "tests/support/heads.h"

using namespace scalpmark::geometry;
using namespace scalpmark::tests;
using Eigen::Vector3d;

namespace {

Case a_case(Side side) {
  Case c;
  c.coil.model = flat_coil();
  c.side = side;
  return c;
}

const Strip& of(const std::vector<Strip>& all, StripKind kind) {
  const auto found =
      std::find_if(all.begin(), all.end(), [&](const Strip& tape) { return tape.kind == kind; });
  REQUIRE(found != all.end());
  return *found;
}

double place_of(const Strip& tape, StripMarkKind what, const std::string& label = {}) {
  const auto found = std::find_if(tape.marks.begin(), tape.marks.end(), [&](const StripMark& mark) {
    return mark.what == what && mark.label == label;
  });
  REQUIRE(found != tape.marks.end());
  return found->at_mm;
}

}  // namespace

TEST_CASE("strips of a ball are its great circles, marked at the 10-20 shares") {
  // Closed form: on a sphere with its four points on the equator each tape over the vertex is half of a great
  // circle.
  constexpr double R = 90;
  const Head head = sphere_head(R, 6);
  const double half_turn = R * std::acos(-1.0);
  for (const Side side : {Side::left, Side::right}) {
    const Case c = a_case(side);
    const auto all = strips(head, c, solve(head, c, TapeDistances::left_out));
    REQUIRE(all.size() == 5);
    const Strip& midline = of(all, StripKind::midline);
    CHECK(midline.length_mm == Approx(half_turn).margin(0.05));
    CHECK(place_of(midline, StripMarkKind::half) == Approx(half_turn / 2).margin(0.05));
    CHECK(place_of(midline, StripMarkKind::landmark, "Fz") == Approx(0.3 * half_turn).margin(0.05));
    const Strip& coronal = of(all, StripKind::coronal);
    CHECK(place_of(coronal, StripMarkKind::landmark, "C3") == Approx(0.3 * half_turn).margin(0.05));
    // From the left ear to the right one: what lies on the left comes first.
    CHECK(place_of(coronal, StripMarkKind::out) ==
          Approx(half_turn / 2 + (side == Side::left ? -50 : 50)).margin(0.05));
    CHECK(of(all, StripKind::to_the_start).length_mm == Approx(10).margin(1e-6));
    CHECK(of(all, StripKind::to_the_site).length_mm == Approx(50).margin(1e-6));
    for (const Strip& tape : all) {
      CHECK(tape.marks.front().at_mm == 0);
      CHECK(tape.marks.back().at_mm == Approx(tape.length_mm));
      CHECK(std::is_sorted(tape.marks.begin(), tape.marks.end(),
                           [](const StripMark& a, const StripMark& b) { return a.at_mm < b.at_mm; }));
    }
  }
}

TEST_CASE("a strip laid on the head that it is for ends every mark within half a millimetre of its place") {
  const Head head = lopsided_head(5);
  for (const Side side : {Side::left, Side::right}) {
    const Case c = a_case(side);
    const Plan plan = solve(head, c, TapeDistances::left_out);
    const auto all = strips(head, c, plan);
    const auto check = [&](const Strip& strip, const Tape& tape, double from_mm, double sign) {
      for (const StripMark& mark : strip.marks) {
        const double along = sign * (mark.at_mm - from_mm);
        if (mark.what != StripMarkKind::landmark || mark.label.empty() || along < 0 ||
            along > tape.length_mm() + 1e-6)
          continue;
        INFO(mark.label);
        const Landmark* meant = find(plan.landmarks, mark.label);
        REQUIRE(meant != nullptr);
        CHECK((tape.at_mm(along).at - meant->at).norm() < 0.5);
      }
    };
    const VertexTapes& tapes = head.vertex_tapes();
    check(of(all, StripKind::midline), tapes.midline, 0, 1);
    check(of(all, StripKind::coronal), tapes.coronal, 0, 1);
    const Strip& around = of(all, StripKind::around);
    const Tape left = side_tape(head.skin(), tapes, true), right = side_tape(head.skin(), tapes, false);
    check(around, left, 0, 1);
    check(around, right, around.length_mm, -1);  // the right half is laid from the back
    CHECK(around.length_mm == Approx(plan.tapes.circumference_mm));

    const double out = place_of(of(all, StripKind::coronal), StripMarkKind::out);
    const Tape forward =
        forward_tape(head, tapes.coronal.at_mm(out).on_skin, of(all, StripKind::to_the_start).length_mm);
    CHECK((forward.at(1).at - plan.start.wanted).norm() < 0.5);
  }
}

TEST_CASE("no strip is printed for a start on the coronal tape, or a site that is a landmark") {
  const Head head = sphere_head(90, 5);
  Case c = a_case(Side::left);
  c.search.anterior_mm = 0;
  c.treatment.rule = TreatmentRule::landmark;
  c.treatment.label = "F3";
  const auto all = strips(head, c, solve(head, c, TapeDistances::left_out));
  CHECK(all.size() == 3);
  c.search.anterior_mm = -20;
  const auto behind = strips(head, c, solve(head, c, TapeDistances::left_out));
  CHECK(of(behind, StripKind::to_the_start).length_mm == Approx(20).margin(1e-6));
}
