#pragma once

#include <Eigen/Core>
#include <map>
#include <optional>
#include <vector>

#include "geometry/base/ranges.h"
#include "geometry/exercise/exercise.h"
#include "geometry/head/head.h"

namespace scalpmark::geometry {

/// What a hand has put down for one step. Head-file frame, mm and degrees.
struct Placed {
  /// A pencil mark, or the skin point under the coil's centre. Anywhere near the skin: it counts where the
  /// skin is nearest.
  std::optional<Eigen::Vector3d> at;
  std::optional<double> reading_mm;  ///< as typed
  /// Of the coil's front axis, from forward, positive toward the midline, in the head's own directions.
  std::optional<double> angle_deg;
  /// The points the tape was held at when it was read (pulled_tape.h), for telling a tape that lay wrong from
  /// one that was read wrong. Empty: not known. Of the circumference the tape is closed.
  std::vector<Eigen::Vector3d> tape;

  friend bool operator==(const Placed&, const Placed&) = default;
};

/// What may be typed for a tape on a head, mm; and at how many points one may be held.
inline constexpr Range reading_range{1, 999};
inline constexpr std::size_t most_tape_points = 20;

/// One go at an exercise. Only what was put down: nothing is worked out here.
struct Attempt {
  std::map<Step, Placed> placed;
  std::map<Task, double> seconds;  ///< that the task took; empty where no clock ran

  friend bool operator==(const Attempt&, const Attempt&) = default;
};

// The ways to put something down, for mouse, keyboard, files and tests alike. Each replaces what the step had
// before. Refuse (GeometryError) a place or number that is not finite, a reading or an angle out of its
// range, a tape held at too many points, and a step that asks for something else.

void put_mark(Attempt& attempt, const Step& step, const Eigen::Vector3d& at);
/// `tape`: the points it was held at, if known.
void type_reading(Attempt& attempt, const Step& step, double mm, std::vector<Eigen::Vector3d> tape = {});
void lay_coil_down(Attempt& attempt, const Step& step, const Eigen::Vector3d& pulse, double angle_deg);
/// Undo of all of them.
void rub_out(Attempt& attempt, const Step& step);

/// What was put down for a step; null if nothing was.
[[nodiscard]] const Placed* placed_for(const Attempt& attempt, const Step& step);
/// The first step of the exercise without anything put down; empty when all is done.
[[nodiscard]] std::optional<Step> next_step(const Exercise& exercise, const Attempt& attempt);

}  // namespace scalpmark::geometry
