#include "geometry/exercise/right_answers.h"

#include <cmath>

#include "geometry/base/error.h"
#include "geometry/exercise/lost_mark.h"
#include "geometry/hands/draws.h"
#include "geometry/head/face_region.h"
#include "geometry/head/on_head.h"
#include "geometry/plan/edge_marks.h"
#include "geometry/plan/lay_on_marks.h"
#include "geometry/plan/placement.h"
#include "geometry/plan/solve.h"
#include "geometry/plan/treatment.h"

namespace scalpmark::geometry {

using Eigen::Vector3d;

namespace {

/// What is drawn by chance for an exercise, each with its own sequence.
enum DrawnThing : int { given_forward = 0, given_outward, given_angle, lost_forward, lost_outward };

/// How far from the case's the given site and the lost mark lie at most, each way, and how far the given
/// marks' angle is from the case's. Ours: more than a hand is off that repeats the case's own by heart.
constexpr double given_within_mm = 12, lost_within_mm = 15, given_within_deg = 10;

/// From -1 to 1.
double drawn(const Exercise& exercise, DrawnThing thing) {
  // Apart from what a head is drawn by.
  constexpr int marks = 1;
  return 2 * Draws(exercise.number, marks).uniform(thing) - 1;
}

SurfacePoint moved(const Head& head, Side side, const Vector3d& from, double forward_mm, double outward_mm) {
  const SurfacePoint at = head.skin().closest(from);
  const Directions d = directions_at(head, side, at);
  return head.skin().closest(from + forward_mm * d.forward + outward_mm * d.outward);
}

Placed mark_at(const Vector3d& at) {
  Placed placed;
  placed.at = at;
  return placed;
}

Placed read_as(double mm) {
  Placed placed;
  placed.reading_mm = mm;
  return placed;
}

Placed laid_at(const Vector3d& pulse, double angle_deg) {
  Placed placed = mark_at(pulse);
  placed.angle_deg = angle_deg;
  return placed;
}

/// The marks someone else has drawn, and the coil that is laid on them. Nearer to the case's own where the
/// head or the rule leaves no room.
void give_marks(RightAnswers& answers) {
  const Head& head = answers.head;
  const Side side = side_of(answers.plan.treatment);
  for (const double share : {1.0, 0.5, 0.25, 0.0}) try {
      const SurfacePoint site = moved(head, side, answers.plan.treatment.wanted,
                                      share * given_within_mm * drawn(answers.exercise, given_forward),
                                      share * given_within_mm * drawn(answers.exercise, given_outward));
      CoilSetup setup = answers.the_case.coil;
      setup.angle_deg += share * given_within_deg * drawn(answers.exercise, given_angle);
      const auto edge = mark_of(head, setup, answers.the_case.treatment.drawn_by,
                                pose_at(head, setup, side, site), site, front_edge(setup));
      if (!edge || on_face(head, head.skin().position(site))) continue;
      const LaidOnMarks laid = lay_on_marks(head, setup, side, site, *edge);
      answers.given = {head.skin().position(site), head.skin().position(*edge)};
      answers.right[{Task::coil_on_given_marks, 0}] =
          laid_at(head.skin().position(laid.pulse), laid.angle_deg);
      return;
    } catch (const GeometryError&) {
    }
  // Marks that no coil fits by the centre line are laid by the edge and the case's angle, as in a plan.
  const Placement& own = answers.plan.treatment;
  answers.given = {own.wanted, *own.mark};
  answers.right[{Task::coil_on_given_marks, 0}] = laid_at(own.pulse, own.angle_deg);
}

void lose_mark(RightAnswers& answers) {
  const Head& head = answers.head;
  const Side side = side_of(answers.plan.treatment);
  SurfacePoint at = head.skin().closest(answers.plan.treatment.wanted);
  for (const double share : {1.0, 0.5, 0.25}) {
    const SurfacePoint there = moved(head, side, answers.plan.treatment.wanted,
                                     share * lost_within_mm * drawn(answers.exercise, lost_forward),
                                     share * lost_within_mm * drawn(answers.exercise, lost_outward));
    if (on_face(head, head.skin().position(there))) continue;
    at = there;
    break;
  }
  const SkinFiducials& f = head.fiducials();
  answers.lost = lost_mark(head.skin(), {head.vertex(), f.nasion, f.left_tragus, f.right_tragus}, at);
  answers.right[{Task::find_again, 0}] = mark_at(head.skin().position(at));
}

void add_from_plan(RightAnswers& answers) {
  auto& right = answers.right;
  const Plan& plan = answers.plan;
  const Fiducials& f = plan.fiducials;
  const std::array<const Vector3d*, 4> points{&f.nasion, &f.inion, &f.left_tragus, &f.right_tragus};
  for (int i = 0; i < 4; ++i) right[{Task::four_points, i}] = mark_at(*points[static_cast<size_t>(i)]);
  const std::array tapes{plan.tapes.nasion_inion_mm, plan.tapes.tragus_tragus_mm,
                         plan.tapes.circumference_mm};
  for (int i = 0; i < 3; ++i) right[{Task::three_tapes, i}] = read_as(tapes[static_cast<size_t>(i)]);
  right[{Task::vertex, 0}] = mark_at(answers.head.skin().position(answers.head.vertex()));
  right[{Task::start, 0}] = mark_at(plan.start.wanted);
  const bool on_marks = answers.the_case.search.grid_on == GridOn::edge_marks;
  for (const GridSpot& spot : plan.grid)
    right[step_of({spot.row, spot.column})] =
        mark_at(on_marks ? *spot.placement.mark : spot.placement.wanted);
  right[{Task::hotspot, 0}] = mark_at(plan.hotspot.pulse);
  right[{Task::site, 0}] = mark_at(plan.treatment.wanted);
  right[{Task::edge_mark, 0}] = mark_at(*plan.treatment.mark);
  right[{Task::coil, 0}] = laid_at(plan.treatment.pulse, plan.treatment.angle_deg);
}

void require_marks(const RightAnswers& answers) {
  const bool on_marks = answers.the_case.search.grid_on == GridOn::edge_marks;
  bool all = answers.plan.treatment.mark.has_value();
  for (const GridSpot& spot : answers.plan.grid) all = all && (!on_marks || spot.placement.mark);
  if (!all)
    throw GeometryError(Message::of(
        "An edge mark of this case falls off the head, so nobody can draw it; choose another marking rule, angle or site for the exercise."));
}

/// A place between spots is no mark that was drawn: the spot nearest to it.
Case on_a_spot(const Case& the_case) {
  Case own = the_case;
  if (own.hotspot_off_grid.is_given()) {
    const double step = own.search.pitch_mm;
    const auto nearest = [&](const std::optional<double>& mm) {
      return static_cast<int>(std::lround(std::clamp(mm.value_or(0) / step, -1.0, 1.0)));
    };
    own.hotspot = {nearest(own.hotspot_off_grid.forward_mm), nearest(own.hotspot_off_grid.outward_mm)};
    own.hotspot_off_grid = {};
  }
  own.hotspot_awaited = false;
  return own;
}

}  // namespace

RightAnswers right_answers(const Head& head, const Case& the_case, const Exercise& exercise) {
  check_exercise(exercise);
  RightAnswers answers{head, on_a_spot(the_case), exercise, {}, {}, {}, {}};
  answers.plan = solve(head, answers.the_case, TapeDistances::left_out);
  require_marks(answers);
  add_from_plan(answers);
  give_marks(answers);
  lose_mark(answers);
  return answers;
}

}  // namespace scalpmark::geometry
