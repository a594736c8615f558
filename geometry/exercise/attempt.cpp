#include "geometry/exercise/attempt.h"

#include <cmath>
#include <utility>

#include "geometry/base/error.h"
#include "geometry/base/ranges.h"

namespace scalpmark::geometry {

using Eigen::Vector3d;

namespace {

void require_asked(const Step& step, Asks asked) {
  if (step.which < 0 || step.which >= steps_in(step.task) || asked_in(step.task) != asked)
    throw GeometryError(Message::of(
        "The step \"%1\" does not ask for that; put down what it asks for.",
        step.which < 0 || step.which >= steps_in(step.task) ? std::string(key_of(step.task)) : key_of(step)));
}

void require_place(const Step& step, const Vector3d& at) {
  // Further from the frame's origin than any head's scan.
  constexpr double farthest_mm = 1e5;
  if (!at.allFinite() || at.norm() > farthest_mm)
    throw GeometryError(
        Message::of("The place put down for \"%1\" is no place on a head; put it down again.", key_of(step)));
}

}  // namespace

void put_mark(Attempt& attempt, const Step& step, const Vector3d& at) {
  require_asked(step, Asks::mark);
  require_place(step, at);
  Placed placed;
  placed.at = at;
  attempt.placed[step] = std::move(placed);
}

void type_reading(Attempt& attempt, const Step& step, double mm, std::vector<Vector3d> tape) {
  require_asked(step, Asks::reading);
  if (!reading_range.holds(mm))
    throw GeometryError(Message::of("The tape was read as %1 cm; a tape on a head reads %2 to %3 cm.",
                                    number(mm / 10), number(reading_range.low / 10),
                                    number(reading_range.high / 10)));
  for (const Vector3d& at : tape) require_place(step, at);
  if (tape.size() > most_tape_points)
    throw GeometryError(Message::of("The tape for \"%1\" is held at %2 points; %3 are enough.", key_of(step),
                                    tape.size(), most_tape_points));
  Placed placed;
  placed.reading_mm = mm;
  placed.tape = std::move(tape);
  attempt.placed[step] = std::move(placed);
}

void lay_coil_down(Attempt& attempt, const Step& step, const Vector3d& pulse, double angle_deg) {
  require_asked(step, Asks::coil);
  require_place(step, pulse);
  if (!ranges::angle_deg.holds(angle_deg))
    throw GeometryError(Message::of("The coil was laid at %1 degrees; an angle is from %2 to %3.",
                                    number(angle_deg), number(ranges::angle_deg.low),
                                    number(ranges::angle_deg.high)));
  Placed placed;
  placed.at = pulse;
  placed.angle_deg = angle_deg;
  attempt.placed[step] = std::move(placed);
}

void rub_out(Attempt& attempt, const Step& step) {
  attempt.placed.erase(step);
}

const Placed* placed_for(const Attempt& attempt, const Step& step) {
  const auto found = attempt.placed.find(step);
  return found == attempt.placed.end() ? nullptr : &found->second;
}

std::optional<Step> next_step(const Exercise& exercise, const Attempt& attempt) {
  for (const Step& step : steps_of(exercise))
    if (!placed_for(attempt, step)) return step;
  return {};
}

}  // namespace scalpmark::geometry
