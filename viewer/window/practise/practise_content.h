#pragma once

#include <Eigen/Core>
#include <optional>

#include "geometry/hands/tolerance.h"
#include "viewer/stage/scene/shown.h"
#include "viewer/window/practise/exercise_run.h"
#include "viewer/window/stage_view/stage_content.h"

namespace scalpmark::window {

/// What is on the stage while an exercise runs: the skin, what hands have laid and drawn on it, and the marks
/// that someone else has drawn for the task. No landmark, label or number of ours. `by_keys`: where keys hold
/// the tool.
[[nodiscard]] viewer::Shown exercise_shown(const ExerciseRun& run,
                                           const std::optional<Eigen::Vector3d>& by_keys);
/// Where it is looked at from when the step begins: a side of the head, never the place that is asked for.
/// Tasks with a coil are seen by the operator's eye.
[[nodiscard]] StageLook exercise_look(const ExerciseRun& run);

/// How far an operator's eye is from the head, mm: half a metre, as somebody who stands behind the chair and
/// looks down on the coil. Common practice, no source.
inline constexpr double operators_eye_mm = 500;
/// From behind the patient, on the side of the coil, looking down on it; other views keep the eye's distance.
[[nodiscard]] StageLook operators_look(const ExerciseRun& run, const std::optional<viewer::View>& from = {});

/// After the exercise: what was put down for a step and where it should have been, with the way between.
[[nodiscard]] viewer::Shown replay_shown(const ExerciseRun& run, const geometry::StepScore& step);
[[nodiscard]] StageLook replay_look(const ExerciseRun& run, const geometry::StepScore& step);

/// After the exercise: where the pulse went, where perfect hands put it.
[[nodiscard]] viewer::Shown pulse_shown(const ExerciseRun& run, const geometry::PulseScore& pulse);
[[nodiscard]] StageLook pulse_look(const ExerciseRun& run, const geometry::PulseScore& pulse);

}  // namespace scalpmark::window
