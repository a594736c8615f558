#pragma once

#include <Eigen/Core>
#include <functional>

#include "geometry/exercise/attempt.h"
#include "geometry/exercise/chain.h"
#include "geometry/exercise/right_answers.h"
#include "geometry/head/on_head.h"
#include "geometry/surface/triangle_math.h"

namespace scalpmark::tests {

/// How far off a hand is at one step: two ways over the skin (as Offset has them) or too long a reading, mm;
/// a coil's turn, degrees.
struct Slip {
  Eigen::Vector2d mm{0, 0};
  double deg = 0;
};

/// What a trainee who slips so does: each step where it ought to be given what came before, and then off, put
/// down through the functions that the mouse uses.
inline geometry::Attempt attempt_with(
    const geometry::RightAnswers& answers,
    const std::function<Slip(const geometry::Step&, const geometry::Placed& should_be)>& slips) {
  using namespace geometry;
  const Head& head = answers.head;
  Attempt attempt;
  Chain chain(answers);
  for (const Step& step : steps_of(answers.exercise)) {
    const auto should_be = chain.should_be(step);
    if (!should_be) continue;
    const Slip slip = slips(step, *should_be);
    if (should_be->reading_mm) {
      type_reading(attempt, step, *should_be->reading_mm + slip.mm[0]);
    } else {
      Eigen::Vector3d at = *should_be->at;
      if (!slip.mm.isZero(0)) {
        const Side side =
            step.task <= Task::hotspot ? answers.the_case.side : side_of(answers.plan.treatment);
        const SurfacePoint here = head.skin().closest(at);
        const Directions d = directions_at(head, side, here);
        Eigen::Vector3d first = d.forward, second = d.outward;
        if (step.task == Task::four_points) {
          const Eigen::Vector3d normal = head.skin().smooth_normal(here);
          first = tangent_part(head.axes().up, normal);
          second = tangent_part(
              step.which < 2 ? Eigen::Vector3d(way_to(side) * head.axes().right) : head.axes().front, normal);
        }
        at = head.skin().position(head.skin().closest(at + slip.mm[0] * first + slip.mm[1] * second));
      }
      if (should_be->angle_deg)
        lay_coil_down(attempt, step, at, *should_be->angle_deg + slip.deg);
      else
        put_mark(attempt, step, at);
    }
    chain.take(step, *placed_for(attempt, step));
  }
  return attempt;
}

inline geometry::Attempt perfect_attempt(const geometry::RightAnswers& answers) {
  return attempt_with(answers, [](const auto&, const auto&) { return Slip{}; });
}

}  // namespace scalpmark::tests
