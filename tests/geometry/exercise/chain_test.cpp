// What each step ought to be after marks that are off: the head as they make it, the tapes as they lie then.
#include "geometry/exercise/chain.h"

#include <catch2/catch.hpp>
#include <cmath>

#include "geometry/base/angles.h"
#include "geometry/exercise/score.h"
#include "geometry/head/landmarks.h"
#include "geometry/head/vertex.h"
#include "geometry/plan/edge_marks.h"
#include "geometry/plan/lay_on_marks.h"
#include "geometry/plan/placement.h"
#include "geometry/plan/search.h"
#include "tests/support/coils.h"
#include "tests/support/heads.h"
#include "tests/support/round_head.h"
#include "tests/support/scored.h"
#include "tests/support/trainee.h"

using namespace scalpmark::geometry;
using namespace scalpmark::tests;
using Eigen::Vector3d;

namespace {

constexpr double alike_mm = 0.01;
constexpr Step nasion{Task::four_points, 0}, left_tragus{Task::four_points, 2},
    right_tragus{Task::four_points, 3}, vertex{Task::vertex, 0}, start{Task::start, 0},
    hotspot{Task::hotspot, 0}, site{Task::site, 0}, edge{Task::edge_mark, 0}, coil{Task::coil, 0};

/// The tragi marked 10 mm before and behind where they are: the head seems turned.
struct Turned {
  explicit Turned(const Case& the_case)
      : answers(right_answers(coarse_lop(), the_case, whole_exercise())), chain(answers) {
    const HeadAxes& axes = answers.head.axes();
    mark(left_tragus, right(left_tragus) + 10 * axes.front);
    mark(right_tragus, right(right_tragus) - 10 * axes.front);
    for (const int which : {0, 1}) mark({Task::four_points, which}, right({Task::four_points, which}));
    felt.emplace(answers.head.skin(),
                 SkinFiducials{on_skin(nasion),
                               on_skin({Task::four_points, 1}),
                               on_skin(left_tragus),
                               on_skin(right_tragus),
                               {}},
                 answers.head.vertex());
  }

  [[nodiscard]] Vector3d right(const Step& step) const { return *answers.right.at(step).at; }
  void mark(const Step& step, const Vector3d& at) {
    Placed placed;
    placed.at = answers.head.skin().position(answers.head.skin().closest(at));
    chain.take(step, placed);
  }
  [[nodiscard]] Vector3d should_be(const Step& step) { return *chain.should_be(step)->at; }
  [[nodiscard]] SurfacePoint on_skin(const Step& step) {
    return answers.head.skin().closest(*chain.stands(step)->at);
  }
  /// There, and not where the head as it is would have it.
  void check(const Step& step, const SurfacePoint& there, const SurfacePoint& by_the_right_head) {
    INFO(key_of(step));
    const Surface& skin = answers.head.skin();
    CHECK((should_be(step) - skin.position(there)).norm() < alike_mm);
    CHECK((should_be(step) - skin.position(by_the_right_head)).norm() > 0.5);
  }

  RightAnswers answers;
  Chain chain;
  std::optional<Head> felt;
};

}  // namespace

TEST_CASE("after points that are off each step goes by the head that they make") {
  Turned t(usual_case());
  const Case& c = t.answers.the_case;
  const Surface& skin = t.answers.head.skin();
  // The vertex halves both tapes of the points as marked.
  const SurfacePoint top = t.on_skin(vertex);
  for (const Tape& tape : {Tape::over(skin, t.on_skin(nasion), top, t.on_skin({Task::four_points, 1})),
                           Tape::over(skin, t.on_skin(left_tragus), top, t.on_skin(right_tragus))})
    CHECK((tape.fraction_of(skin.position(top)) - 0.5) * tape.length_mm() == Approx(0).margin(alike_mm));
  const SurfacePoint middle = t.on_skin(step_of(GridPosition{}));
  const GridPosition corner{1, 1};
  t.check(step_of(corner), grid_place(*t.felt, c.side, middle, c.search.pitch_mm, corner),
          grid_place(t.answers.head, c.side, middle, c.search.pitch_mm, corner));
  const SurfacePoint spot = t.on_skin(step_of(c.hotspot)), near = skin.closest(t.right(hotspot));
  const auto laid = [&](const Head& head) {
    return lay_over(head, c.coil, c.search.drawn_by, c.side, spot, near, TapeDistances::left_out).pulse;
  };
  t.check(hotspot, laid(*t.felt), laid(t.answers.head));
  const SurfacePoint at = t.on_skin(site);
  const auto marked = [&](const Head& head) {
    return *mark_of(head, c.coil, c.treatment.drawn_by, pose_at(head, c.coil, c.side, at), at,
                    front_edge(c.coil));
  };
  t.check(edge, marked(*t.felt), marked(t.answers.head));
}

TEST_CASE("a grid of pulse points is laid by the head that the marked points make") {
  Case c = usual_case();
  c.search.grid_on = GridOn::pulse_points;
  Turned t(c);
  const SurfacePoint spot = t.on_skin(step_of(c.hotspot));
  const auto laid = [&](const Head& head) {
    return draw_and_lay(head, c.coil, c.search.drawn_by, c.side, spot, TapeDistances::left_out).pulse;
  };
  const Vector3d found = t.should_be(hotspot);
  CHECK((found - t.answers.head.skin().position(laid(*t.felt))).norm() < alike_mm);
}

TEST_CASE("a coil's angle is told in the head's own directions, whatever points were marked") {
  Turned t(usual_case());
  const Case& c = t.answers.the_case;
  // The edge mark is off, the site is right: the coil is laid on these marks as they are.
  t.mark(site, t.right(site));
  t.mark(edge, t.right(edge) + 6 * t.answers.head.axes().right);
  const LaidOnMarks laid = lay_on_marks(t.answers.head, c.coil, c.side, t.on_skin(site), t.on_skin(edge));
  CHECK((t.should_be(coil) - t.answers.head.skin().position(laid.pulse)).norm() < alike_mm);
  CHECK(*t.chain.should_be(coil)->angle_deg == Approx(laid.angle_deg).margin(0.01));
  CHECK(std::abs(laid.angle_deg - c.coil.angle_deg) > 2);
}

TEST_CASE("a landmark goes by the tapes over the vertex that was marked") {
  Case c = usual_case();
  c.treatment.rule = TreatmentRule::landmark;
  c.treatment.label = "F3";
  const RightAnswers answers = right_answers(coarse_lop(), c, whole_exercise());
  const Surface& skin = answers.head.skin();
  const SkinFiducials& f = answers.head.fiducials();
  Chain chain(answers);
  const SurfacePoint off = skin.closest(*answers.right.at(vertex).at - 10 * answers.head.axes().right);
  Placed placed;
  placed.at = skin.position(off);
  chain.take(vertex, placed);
  const VertexTapes tapes{off, Tape::over(skin, f.nasion, off, f.inion),
                          Tape::over(skin, f.left_tragus, off, f.right_tragus)};
  const auto found = landmark(
      skin, tapes, "F3", [](const std::string&, const Tape& tape, double share) { return tape.at(share); });
  REQUIRE(found);
  const Vector3d should_be = *chain.should_be(site)->at;
  CHECK((should_be - skin.position(found->on_skin)).norm() < alike_mm);
  CHECK((should_be - *answers.right.at(site).at).norm() > 2);
}

TEST_CASE("a mark taken again changes what comes after it, and nothing before") {
  const RightAnswers answers = right_answers(coarse_lop(), usual_case(), whole_exercise());
  const HeadAxes& axes = answers.head.axes();
  Chain chain(answers);
  const auto moved = [&](const Step& step, const Vector3d& by) {
    Placed placed;
    const Surface& skin = answers.head.skin();
    placed.at = skin.position(skin.closest(*answers.right.at(step).at + by));
    chain.take(step, placed);
  };
  const Vector3d first_start = *chain.should_be(start)->at, first_vertex = *chain.should_be(vertex)->at;
  moved(vertex, 10 * axes.front);
  CHECK((*chain.should_be(start)->at - first_start).norm() > 7);
  CHECK(*chain.should_be(vertex)->at == first_vertex);
  moved(left_tragus, 12 * axes.up);
  CHECK((*chain.should_be(vertex)->at - first_vertex).norm() > 2);
}

TEST_CASE("one tragus that is off takes a lost mark with it") {
  const RightAnswers answers = right_answers(coarse_lop(), usual_case(), whole_exercise());
  const Step lost{Task::find_again, 0};
  for (const Step& wrong : {nasion, left_tragus, right_tragus}) {
    INFO(key_of(wrong));
    Chain chain(answers);
    Placed placed;
    placed.at = *answers.right.at(wrong).at + 10 * answers.head.axes().up;
    chain.take(wrong, placed);
    chain.take(vertex, answers.right.at(vertex));
    CHECK((*chain.should_be(lost)->at - *answers.right.at(lost).at).norm() > 0.5);
  }
}

TEST_CASE("an edge mark drawn for a head that seems turned is off by that angle, and the angle is carried") {
  const RightAnswers answers = right_answers(coarse_lop(), usual_case(), whole_exercise());
  const Vector3d left = *answers.right.at(left_tragus).at, right = *answers.right.at(right_tragus).at;
  const Score made = score(answers, attempt_with(answers, [](const Step& step, const Placed&) {
                             if (step == left_tragus) return Slip{{0, 10}};
                             if (step == right_tragus) return Slip{{0, -10}};
                             if (step == edge) return Slip{{3, 3}};
                             return Slip{};
                           }));
  for (const StepScore& s : made.steps) {
    if (s.step != edge) continue;
    // The line between the tragi is turned by 20 mm over its length; so is forward, nearly all of it where
    // the skin is level. Toward the nose on the left is clockwise seen from above, away from the midline
    // forward.
    const double turned = degrees(std::atan2(20, (left - right).norm()));
    CHECK(std::abs(*s.carried.angle_deg) == Approx(turned).margin(0.35 * turned));
    CHECK(*s.off.angle_deg == Approx(*s.own.angle_deg + *s.carried.angle_deg).margin(1e-9));
    CHECK(std::abs(*s.own.angle_deg) > 0.5);
  }
}
