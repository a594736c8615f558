#pragma once

#include "viewer/teach/mistake.h"
#include "viewer/window/stage_view/stage_content.h"

namespace scalpmark::window {

/// The picture of what comes of a mistake: the coil where it really lies, wanted pulse point and edge mark
/// beside the real ones, between them lines with their lengths, looked at from close by.
[[nodiscard]] StageContent what_if_content(const viewer::MistakeOutcome& outcome,
                                           const geometry::Case& the_case, const geometry::Plan& plan);

}  // namespace scalpmark::window
