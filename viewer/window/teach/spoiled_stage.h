#pragma once

#include "viewer/teach/lesson.h"
#include "viewer/teach/mistake.h"
#include "viewer/window/teach/lesson_parts.h"

namespace scalpmark::window {

/// What a mistake looks like: the coil where it really lies, wanted pulse point and edge mark beside the real
/// ones, and between them lines with their lengths.
[[nodiscard]] LessonStage spoiled_stage(const viewer::Spoiled& spoiled, const geometry::Case& entered,
                                        const geometry::Plan& plan);

/// Where to look for it.
[[nodiscard]] viewer::CloseLook close_look(const viewer::Spoiled& spoiled);

}  // namespace scalpmark::window
