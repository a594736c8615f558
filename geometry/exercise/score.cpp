#include "geometry/exercise/score.h"

#include <Eigen/Geometry>
#include <algorithm>
#include <cmath>

#include "geometry/base/angles.h"
#include "geometry/base/error.h"
#include "geometry/exercise/chain.h"
#include "geometry/exercise/pulled_tape.h"
#include "geometry/head/on_head.h"
#include "geometry/surface/triangle_math.h"

namespace scalpmark::geometry {

using Eigen::Vector2d;
using Eigen::Vector3d;

namespace {

/// The two directions that an offset is told in, unit.
struct TwoWays {
  Vector3d first, second;
};

TwoWays ways_at(const RightAnswers& answers, const Step& step, const Vector3d& at) {
  const Head& head = answers.head;
  const Side side = step.task <= Task::hotspot ? answers.the_case.side : side_of(answers.plan.treatment);
  const SurfacePoint there = head.skin().closest(at);
  if (step.task != Task::four_points) {
    const Directions d = directions_at(head, side, there);
    return {d.forward, d.outward};
  }
  const HeadAxes& axes = head.axes();
  const Vector3d normal = head.skin().smooth_normal(there);
  const bool midline = step.which < 2;
  const Vector3d across = midline ? Vector3d(way_to(side) * axes.right) : axes.front;
  return {tangent_part(axes.up, normal), tangent_part(across, normal)};
}

Offset offset_between(const RightAnswers& answers, const Step& step, const Placed& from, const Placed& to) {
  Offset offset;
  if (from.reading_mm && to.reading_mm) offset.mm = *to.reading_mm - *from.reading_mm;
  if (from.at && to.at) {
    const Vector3d way = *to.at - *from.at;
    const TwoWays ways = ways_at(answers, step, *from.at);
    Vector2d flat(way.dot(ways.first), way.dot(ways.second));
    offset.mm = way.norm();
    if (flat.norm() > 0) flat *= offset.mm / flat.norm();
    offset.forward_mm = flat[0];
    offset.outward_mm = flat[1];
  }
  if (from.angle_deg && to.angle_deg) offset.angle_deg = wrapped_deg(*to.angle_deg - *from.angle_deg);
  return offset;
}

/// Which way a mark lies from a site, from forward, positive toward the midline, degrees.
double bearing_deg(const RightAnswers& answers, const Vector3d& site, const Vector3d& mark) {
  const SurfacePoint at = answers.head.skin().closest(site);
  const Directions d = directions_at(answers.head, side_of(answers.plan.treatment), at);
  const Vector3d way = mark - answers.head.skin().position(at);
  return degrees(std::atan2(-way.dot(d.outward), way.dot(d.forward)));
}

/// The edge mark's angles, each as seen from the site mark that it goes with.
void add_angles_of_edge(const RightAnswers& answers, Chain& chain, StepScore& step) {
  const auto site = chain.stands({Task::site, 0});
  if (!step.placed || !step.should_be || !site || !site->at) return;
  const double placed = bearing_deg(answers, *site->at, *step.placed->at);
  const double should_be = bearing_deg(answers, *site->at, *step.should_be->at);
  const double right = bearing_deg(answers, *answers.right.at({Task::site, 0}).at, *step.right.at);
  step.own.angle_deg = wrapped_deg(placed - should_be);
  step.off.angle_deg = wrapped_deg(placed - right);
  step.carried.angle_deg = wrapped_deg(should_be - right);
}

std::optional<double> misread_mm(const RightAnswers& answers, const Step& step, const Placed& placed) {
  if (!placed.reading_mm || placed.tape.size() < 2) return {};
  const bool closed = static_cast<TapeKind>(step.which) == TapeKind::circumference;
  try {
    return *placed.reading_mm - pull_tape(answers.head, placed.tape, closed).length_mm;
  } catch (const GeometryError&) {
    return {};
  }
}

/// What was put down, on the skin.
Placed on_skin(const RightAnswers& answers, Placed placed) {
  const Surface& skin = answers.head.skin();
  if (placed.at) placed.at = skin.position(skin.closest(*placed.at));
  return placed;
}

StepScore score_step(const RightAnswers& answers, Chain& chain, const Attempt& attempt, const Step& step) {
  StepScore s;
  s.step = step;
  s.right = answers.right.at(step);
  s.should_be = chain.should_be(step);
  const Placed* placed = placed_for(attempt, step);
  if (s.should_be) s.carried = offset_between(answers, step, s.right, *s.should_be);
  if (!placed) return s;
  s.placed = on_skin(answers, *placed);
  s.off = offset_between(answers, step, s.right, *s.placed);
  s.own = s.should_be ? offset_between(answers, step, *s.should_be, *s.placed) : s.off;
  s.misread_mm = misread_mm(answers, step, *placed);
  if (step.task == Task::edge_mark) add_angles_of_edge(answers, chain, s);
  return s;
}

std::optional<PulseScore> score_pulse(const RightAnswers& answers, Chain& chain, const Attempt& attempt) {
  bool leads = false, given = false;
  for (const auto& [step, placed] : attempt.placed) {
    if (!has_task(answers.exercise, step.task)) continue;
    leads = leads || leads_to_pulse(step.task);
    given = given || step.task == Task::coil_on_given_marks;
  }
  if (!leads && !given) return {};
  const Step last{leads ? Task::coil : Task::coil_on_given_marks, 0};
  const std::optional<Placed> real = chain.stands(last);
  if (!real || !real->at) return {};
  PulseScore pulse;
  pulse.laid = has_task(answers.exercise, last.task) && placed_for(attempt, last);
  const Placed& aim = answers.right.at(last);
  pulse.wanted = leads ? answers.plan.treatment.wanted : answers.given.site;
  pulse.aim = *aim.at;
  pulse.real = *real->at;
  pulse.off = offset_between(answers, last, aim, *real);
  return pulse;
}

}  // namespace

double weight_mm(const StepScore& step, const Case& the_case) {
  const double turned = std::abs(radians(step.own.angle_deg.value_or(0))) * the_case.coil.centre_to_edge_mm;
  return std::max(std::abs(step.own.mm), turned);
}

Score score(const RightAnswers& answers, const Attempt& attempt) {
  Chain chain(answers);
  for (const Step& step : steps_of(answers.exercise))
    if (const Placed* placed = placed_for(attempt, step)) chain.take(step, on_skin(answers, *placed));
  Score score;
  for (const Step& step : steps_of(answers.exercise))
    score.steps.push_back(score_step(answers, chain, attempt, step));
  score.pulse = score_pulse(answers, chain, attempt);
  double largest = least_habit_mm;
  for (size_t i = 0; i < score.steps.size(); ++i)
    if (const double weight = weight_mm(score.steps[i], answers.the_case); weight > largest) {
      largest = weight;
      score.worst = i;
    }
  return score;
}

Score score(const Head& head, const Case& the_case, const Exercise& exercise, const Attempt& attempt) {
  return score(right_answers(head, the_case, exercise), attempt);
}

}  // namespace scalpmark::geometry
