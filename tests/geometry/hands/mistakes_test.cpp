#include "geometry/hands/mistakes.h"

#include <catch2/catch.hpp>
#include <cmath>

#include "geometry/base/error.h"
#include "geometry/plan/solve.h"
#include "tests/support/coils.h"
#include "tests/support/heads.h"
#include "tests/support/round_head.h"

using namespace scalpmark::geometry;
using namespace scalpmark::tests;
using Eigen::Vector3d;

namespace {

Case case_on(Side side, MarkRule rule) {
  Case c;
  c.coil.model = flat_coil();
  c.side = side;
  use_one_rule(c, rule);
  return c;
}

const std::vector<Mistake>& at_the_site() {
  static const std::vector<Mistake> all{TapeMisread{Misread::treatment, 5},
                                        TapeMisread{Misread::centre_to_edge, -6},
                                        CoilTurned{12, false},
                                        CoilTurned{-20, true},
                                        OtherRule{MarkRule::nearest},
                                        CapSlipped{{6, -4, 5}},
                                        LookedAside{10, 5},
                                        StandsOff{4, {}},
                                        StandsOff{0, {8, 0}}};
  return all;
}

}  // namespace

TEST_CASE("a second mistake that is none leaves the first as it is alone") {
  for (const Side side : {Side::left, Side::right}) {
    const Case c = case_on(side, MarkRule::drop);
    const Plan plan = solve(coarse_lop(), c, TapeDistances::left_out);
    for (const Mistake& mistake : at_the_site()) {
      const WhatIf alone = if_made(coarse_lop(), c, plan, mistake);
      for (const Mistake& none : {Mistake(CoilTurned{0, true}), Mistake(TapeMisread{Misread::treatment, 0}),
                                  Mistake(StandsOff{0, {}})}) {
        INFO("mistake " << mistake.index() << " with none of " << none.index());
        // Turned about its centre a coil rests on the skin again.
        if (std::holds_alternative<CoilTurned>(none) && std::holds_alternative<StandsOff>(mistake)) continue;
        const WhatIf both = if_made(coarse_lop(), c, plan, {mistake, none});
        CHECK(both.off_mm == Approx(alone.off_mm).margin(0.03));
        CHECK((both.really.pulse - alone.really.pulse).norm() < 0.03);
        CHECK(both.really.front.dot(alone.really.front) > 1 - 1e-5);
        CHECK((both.meant - plan.treatment.pulse).norm() < 1e-9);
      }
    }
  }
}

TEST_CASE("the order in which two mistakes are named does not matter", "[slow]") {
  const Case c = case_on(Side::left, MarkRule::drop);
  const Plan plan = solve(coarse_lop(), c, TapeDistances::left_out);
  const auto& all = at_the_site();
  for (size_t i = 0; i < all.size(); ++i)
    for (size_t j = 0; j < i; ++j) {
      const bool no_look =
          (std::holds_alternative<OtherRule>(all[i]) || std::holds_alternative<OtherRule>(all[j])) &&
          (std::holds_alternative<LookedAside>(all[i]) || std::holds_alternative<LookedAside>(all[j]));
      INFO(all[i].index() << " and " << all[j].index());
      if (no_look) {  // laid by nearest, there is no look past the edge
        CHECK_THROWS_AS(if_made(coarse_lop(), c, plan, {all[i], all[j]}), GeometryError);
        continue;
      }
      const WhatIf a = if_made(coarse_lop(), c, plan, {all[i], all[j]}),
                   b = if_made(coarse_lop(), c, plan, {all[j], all[i]});
      CHECK((a.really.pulse - b.really.pulse).norm() < 1e-9);
      CHECK(a.really.front.isApprox(b.really.front, 1e-9));
    }
}

// On a sphere small ways over it add up as in a plane, but for what a length of 5 mm curves on R = 90 mm.
// Turned by 10 degrees about a mark 60 mm away the centre swings by R sin(60 / R) times that angle, square to
// the front axis, outward where the front turns toward the midline (elementary geometry).
TEST_CASE("a site too far forward and a coil turned about its edge mark add up") {
  for (const Side side : {Side::left, Side::right}) {
    const Case c = case_on(side, MarkRule::tape);
    const Plan plan = solve(ball(), c, TapeDistances::left_out);
    const Placement& t = plan.treatment;
    const WhatIf w = if_made(ball(), c, plan, {TapeMisread{Misread::treatment, 5}, CoilTurned{10, false}});
    const Vector3d square = t.inward * std::cos(M_PI / 4) - t.forward * std::sin(M_PI / 4);
    const double swing = ball_mm * std::sin(60 / ball_mm) * 10 * M_PI / 180;
    const Vector3d expected = 5 * t.forward - swing * square;
    CHECK((w.really.pulse - w.meant - expected).norm() < 1.5);
    CHECK(w.off_mm == Approx(expected.norm()).margin(1));
    // The two help each other: either alone is off by less.
    CHECK(w.off_mm > swing + 2);
    CHECK(w.really.angle_deg == Approx(t.angle_deg + 10));
  }
}

// Tilted by t and lifted clear, the coil's centre stands R / cos t from a ball's centre; hair under it adds
// its thickness along the site's normal (elementary geometry).
TEST_CASE("hair under a coil that is held askew comes on top of the tilt") {
  const Case c = case_on(Side::left, MarkRule::tape);
  const Plan plan = solve(ball(), c, TapeDistances::left_out);
  const WhatIf w = if_made(ball(), c, plan, {StandsOff{0, {12, 0}}, StandsOff{5, {}}});
  const Vector3d centre = w.really.pulse + w.really.lift_mm * w.really.normal;
  CHECK(centre.norm() == Approx(ball_mm / std::cos(12 * M_PI / 180) + 5).margin(0.1));
}

TEST_CASE("two lengths to the start misread move it by both") {
  const Case c = case_on(Side::right, MarkRule::tape);
  const Plan plan = solve(ball(), c, TapeDistances::left_out);
  const std::vector<Mistake> both{TapeMisread{Misread::lateral, 5}, TapeMisread{Misread::anterior, 4}};
  const WhatIf w = if_made(ball(), c, plan, both);
  CHECK((w.meant - plan.start.pulse).norm() < 1e-9);
  CHECK(w.off_mm == Approx(std::hypot(5, 4)).margin(0.3));
  CHECK_FALSE(w.vertex);
  // The vertex as far to the ear as the tape is too long gives the same start (on a sphere, along the tape).
  const WhatIf vertex =
      if_made(ball(), c, plan, std::vector<Mistake>{VertexOff{0, 5}, TapeMisread{Misread::anterior, 4}});
  CHECK((vertex.really.pulse - w.really.pulse).norm() < 0.1);
  CHECK(vertex.vertex);
}

namespace {

/// On the ball: so far toward the ear along the half circle from tragus to tragus, then along the circle that
/// is square to the line between the ears, by angles about that line (elementary geometry).
Vector3d on_ball(Side side, double lateral_mm, double about_ears) {
  const double x = ball_mm * std::sin(lateral_mm / ball_mm), r = ball_mm * std::cos(lateral_mm / ball_mm);
  return {side == Side::left ? -x : x, r * std::sin(about_ears), r * std::cos(about_ears)};
}

double arc_by_chord_mm(const Vector3d& a, const Vector3d& b) {
  return 2 * ball_mm * std::asin((a - b).norm() / (2 * ball_mm));
}

}  // namespace

// A length along the circle r turns about the line between the ears by length / r; further toward the ear r
// is smaller. The spots are 10 mm apart, toward the ear along the half circle through them: of a start less
// than half a step off the middle spot answers, of one a whole step off the one before it, at the turn that
// the start has.
TEST_CASE("what is wrong before the search reaches the site by what the search leaves of it") {
  for (const Side side : {Side::left, Side::right}) {
    Case c = case_on(side, MarkRule::tape);
    c.search.grid_on = GridOn::pulse_points;
    const Plan plan = solve(ball(), c, TapeDistances::left_out);
    const Mistake forward = TapeMisread{Misread::treatment, 5};
    const auto circle = [](double lateral_mm) { return ball_mm * std::cos(lateral_mm / ball_mm); };
    const Vector3d right = on_ball(side, 50, (10 + 50) / circle(50));
    CHECK((plan.treatment.wanted - right).norm() < 0.1);
    const WhatIf half = if_made(ball(), c, plan, {TapeMisread{Misread::lateral, 4.8}, forward});
    const Vector3d after_half = on_ball(side, 54.8, (10 + 55) / circle(54.8));
    CHECK((half.really.pulse - after_half).norm() < 0.2);
    CHECK(half.off_mm == Approx(arc_by_chord_mm(after_half, right)).margin(0.2));
    const WhatIf whole = if_made(ball(), c, plan, {TapeMisread{Misread::lateral, 10}, forward});
    const Vector3d after_whole = on_ball(side, 50, 10 / circle(60) + 55 / circle(50));
    // To first order: the grid is carried along as it is.
    CHECK((whole.really.pulse - after_whole).norm() < 1);
    CHECK(whole.off_mm == Approx(arc_by_chord_mm(after_whole, right)).margin(0.5));
  }
}

// Midline and vertex of the 10-20 head are a great circle and its top. Over a vertex 10 mm to the right that
// circle is tilted about the line from nasion to inion by 10 / R; Fz, 54 degrees from the nasion, moves by
// 2 R asin(sin(54 degrees) sin(5 / R)) (elementary geometry).
TEST_CASE("a site that is a landmark moves with the vertex its tapes run over, whatever is searched") {
  Case c = case_on(Side::right, MarkRule::tape);
  c.treatment = {TreatmentRule::landmark, 50, "Fz", MarkRule::tape};
  const Plan plan = solve(ball(), c, TapeDistances::left_out);
  const WhatIf w = if_made_at_site(ball(), c, plan, {VertexOff{0, 10}});
  CHECK(w.off_mm ==
        Approx(2 * ball_mm * std::asin(std::sin(54 * M_PI / 180) * std::sin(5 / ball_mm))).margin(0.1));
  CHECK((w.really.pulse - w.meant).dot(ball().axes().right) > 5);
  CHECK(if_made_at_site(ball(), c, plan, {TapeMisread{Misread::lateral, 10}}).off_mm < 1e-6);
  CHECK_THROWS_AS(if_made(ball(), c, plan, {TapeMisread{Misread::treatment, 5}, CoilTurned{5, false}}),
                  GeometryError);
}

TEST_CASE("what cannot go wrong at once is refused in a sentence") {
  const Case c = case_on(Side::left, MarkRule::drop);
  const Plan plan = solve(ball(), c, TapeDistances::left_out);
  CHECK_THROWS_AS(if_made(ball(), c, plan, {OtherRule{MarkRule::tape}, OtherRule{MarkRule::nearest}}),
                  GeometryError);
  CHECK_THROWS_AS(if_made(ball(), c, plan, {OtherRule{MarkRule::tape}, LookedAside{10, 0}}), GeometryError);
  CHECK_THROWS_AS(if_made(ball(), c, plan, {CoilTurned{80, false}, CoilTurned{80, false}}), GeometryError);
}
