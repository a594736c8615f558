#pragma once

#include <QString>

#include "viewer/teach/mistake.h"
#include "viewer/window/fields/length_text.h"

namespace scalpmark::window {

/// "What if the coil is turned?"
[[nodiscard]] QString what_if_title(const viewer::Mistake& mistake);

/// What was done wrong and where the pulse goes for it: lengths as on a tape, whole degrees.
[[nodiscard]] QString what_if_sentence(const viewer::MistakeOutcome& outcome, const geometry::Case& the_case,
                                       LengthUnit unit);

}  // namespace scalpmark::window
