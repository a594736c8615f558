#include "geometry/hands/with_strips.h"

#include <catch2/catch.hpp>
#include <cmath>
#include <numbers>

#include "geometry/base/error.h"
#include "geometry/hands/strip_pieces.h"
#include "geometry/plan/solve.h"
#include "tests/support/coils.h"
#include "tests/support/heads.h"
#include "tests/support/round_head.h"

using namespace scalpmark::geometry;
using namespace scalpmark::tests;
using Eigen::Vector3d;

namespace {

const Head& round_head_of_strips() {
  static const Head head = sphere_head(ball_mm, 6);
  return head;
}

Case case_by_tape(Side side) {
  Case c;
  c.coil.model = flat_coil();
  use_one_rule(c, MarkRule::tape);
  c.side = side;
  return c;
}

HandErrors only_reading(double tape_mm) {
  HandErrors e{0, 0, 0, 0, 0, 0, 0, 0, 0, 0};
  e.tape_mm = tape_mm;
  return e;
}

WithStrips laid(const Case& c, const HandErrors& e, const StripErrors& s) {
  const Head& head = round_head_of_strips();
  return with_strips(head, c, solve(head, c, TapeDistances::left_out), e, s);
}

/// The site on a sphere of a start so far out: along the coronal great circle, then forward along the small
/// circle beside the midline.
Vector3d site_at(double lateral_mm, double forward_mm) {
  const double a = lateral_mm / ball_mm, r = ball_mm * std::cos(a), turned = forward_mm / r;
  return {ball_mm * std::sin(a), r * std::sin(turned), r * std::cos(turned)};
}

}  // namespace

TEST_CASE("strips have no reading error: laid and glued without error, nothing of it is left") {
  for (const Side side : {Side::left, Side::right}) {
    const WithStrips w = laid(case_by_tape(side), only_reading(1.4), {0, 0});
    CHECK(w.tapes_alone_mm > 1);
    CHECK(w.tapes_mean_mm == Approx(w.tapes_alone_mm));
    CHECK(w.alone_mm == Approx(0).margin(1e-9));
    CHECK(w.strips_laid == 6);  // two halves, out, forward, to the site, the card
    CHECK(w.tapes_read == 0);
  }
}

TEST_CASE("by a tape it is what the tolerance says", "[slow]") {
  const Case c = case_by_tape(Side::left);
  const Head& head = round_head_of_strips();
  const Plan plan = solve(head, c, TapeDistances::left_out);
  const HandErrors usual;
  const auto t = tolerance(head, c, plan, usual, {.placements = 0});
  const auto w = with_strips(head, c, plan, usual);
  CHECK(w.tapes_mean_mm == Approx(t.first_order.mean_mm));
  CHECK(w.mean_mm < w.tapes_mean_mm);
}

TEST_CASE("a seam between the vertex and the way out moves the start by its gluing alone") {
  // 283 mm from tragus to tragus are two pieces with the seam at the half: on the right side the way out lies
  // behind it, on the left before.
  REQUIRE(seams_before(std::numbers::pi * ball_mm / 2 + 50, std::numbers::pi * ball_mm, letter_piece_mm) ==
          1);
  const double glued_mm = 0.8;
  const WithStrips right = laid(case_by_tape(Side::right), only_reading(1.4), {glued_mm, 0}),
                   left = laid(case_by_tape(Side::left), only_reading(1.4), {glued_mm, 0});
  const double moved = 0.5 * (site_at(50 + glued_mm, 60) - site_at(50 - glued_mm, 60)).norm();
  // The average of a normal error's size.
  CHECK(right.alone_mm == Approx(moved * std::sqrt(2 / std::numbers::pi)).epsilon(0.01));
  CHECK(left.alone_mm == Approx(0).margin(1e-9));
}

TEST_CASE("twice the error of laying puts the pulse off twice as far") {
  const WithStrips once = laid(case_by_tape(Side::left), only_reading(1.4), {0, 1}),
                   twice = laid(case_by_tape(Side::left), only_reading(1.4), {0, 2});
  CHECK(once.alone_mm > 0.5);
  CHECK(twice.alone_mm == Approx(2 * once.alone_mm).epsilon(0.01));
}

TEST_CASE("what no strip has is read from a tape still", "[slow]") {
  Case c = case_by_tape(Side::left);
  c.hotspot.row = 1;
  const WithStrips stepped = laid(c, only_reading(1.4), {0, 0});
  CHECK(stepped.tapes_read == 1);
  CHECK(stepped.alone_mm > 0.5);
  // F3 is no mark of a strip; F7 and Fz, through which it is found, are.
  c.treatment.rule = TreatmentRule::landmark;
  c.treatment.label = "F3";
  const WithStrips landmark = laid(c, only_reading(1.4), {0, 0});
  CHECK(landmark.tapes_read == 1);
  CHECK(landmark.alone_mm > 0.5);
  CHECK(landmark.alone_mm < landmark.tapes_alone_mm);
  c.treatment.label = "C3";
  CHECK(laid(c, only_reading(1.4), {0, 0}).tapes_read == 0);
}

TEST_CASE("errors of strips out of range are refused") {
  for (const StripErrors& wrong : {StripErrors{-0.1, 1}, StripErrors{0.3, 11}, StripErrors{std::nan(""), 1}})
    CHECK_THROWS_AS(laid(case_by_tape(Side::left), only_reading(1.4), wrong), GeometryError);
}
