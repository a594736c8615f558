#pragma once

#include <QString>

#include "viewer/teach/mistake.h"
#include "viewer/window/fields/length_text.h"

namespace scalpmark::window {

/// "What if the coil is turned?"; of two, that there are two.
[[nodiscard]] QString what_if_title(const std::vector<viewer::Mistake>& mistakes);

/// Which mistake is kept while a second is chosen.
[[nodiscard]] QString kept_sentence(const viewer::Mistake& kept, const geometry::Case& the_case,
                                    LengthUnit unit);

/// What was done wrong and where the pulse goes for it: lengths as on a tape, whole degrees. Of two, what
/// each does alone, too.
[[nodiscard]] QString what_if_sentence(const viewer::MistakeOutcome& outcome, const geometry::Case& the_case,
                                       LengthUnit unit);

}  // namespace scalpmark::window
