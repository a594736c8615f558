#pragma once

#include <Eigen/Core>
#include <optional>
#include <vector>

#include "geometry/exercise/attempt.h"
#include "geometry/exercise/right_answers.h"

namespace scalpmark::geometry {

/// From one place to another, straight. Directions are those of the skin at the place it is measured from: of
/// scalp marks forward and outward (away from the midline, on the case's side); of the four points up and, of
/// nasion and inion, outward, of the tragi toward the nose. They are scaled so that both together are `mm`.
/// Of a reading `mm` is how much too long it is (negative: too short), and the directions are 0.
struct Offset {
  double mm = 0;
  double forward_mm = 0, outward_mm = 0;
  /// Where an angle is meant: of the coil, and of the edge mark as seen from its site mark. Positive: too far
  /// toward the midline.
  std::optional<double> angle_deg;
};

/// One step, scored twice.
struct StepScore {
  Step step;
  std::optional<Placed> placed;     ///< empty: not done; then the offsets are 0
  Placed right;                     ///< where it should be
  std::optional<Placed> should_be;  ///< given what came before; empty where that leaves no answer
  Offset off;                       ///< from where it should be to what was placed
  Offset own;      ///< from where it should be given what came before; where that leaves no answer, as `off`
  Offset carried;  ///< from where it should be to there: what earlier steps have done to it
  /// Of a tape whose points are known: what was typed less what the tape as it lay measures.
  std::optional<double> misread_mm;
};

/// The pulse at the end.
struct PulseScore {
  Eigen::Vector3d wanted = Eigen::Vector3d::Zero();  ///< where the plan's treatment is wanted
  Eigen::Vector3d aim = Eigen::Vector3d::Zero();     ///< where perfect hands put it: the plan's pulse as laid
  Eigen::Vector3d real = Eigen::Vector3d::Zero();    ///< where this attempt puts it
  Offset off;                                        ///< from aim to real, with the coil's angle
  bool laid = false;  ///< the trainee laid the coil; else it is laid without error on the marks there are
};

struct Score {
  std::vector<StepScore> steps;     ///< of the exercise, in order
  std::optional<PulseScore> pulse;  ///< empty where the attempt leaves none, and where no task leads to it
  std::optional<size_t> worst;      ///< the step with the largest own error, over least_habit_mm; empty: none
};

/// Less than this is no habit, mm: a pencil's width and a reading's half step. Ours, no source. An angle
/// counts as what it moves the front edge by.
inline constexpr double least_habit_mm = 2.5;

/// How much a step weighs when the largest own error is looked for, mm: its distance, or what its angle moves
/// the coil's front edge by, whichever is more.
[[nodiscard]] double weight_mm(const StepScore& step, const Case& the_case);

/// Scores an attempt. Pure and thread-safe. A perfect attempt scores 0.0 mm at each step and in the pulse; an
/// error at one step and none after it is paid for once.
[[nodiscard]] Score score(const RightAnswers& answers, const Attempt& attempt);
/// The same, working out the answers first (refuses as right_answers()).
[[nodiscard]] Score score(const Head& head, const Case& the_case, const Exercise& exercise,
                          const Attempt& attempt);

}  // namespace scalpmark::geometry
