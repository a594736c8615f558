#pragma once

#include <QString>

namespace scalpmark::window {

/// The quiet line at the foot of the window.
[[nodiscard]] QString caution_line();
/// The cautions in full, as a note on the first start and in the About box (rich text).
[[nodiscard]] QString cautions_text();

}  // namespace scalpmark::window
