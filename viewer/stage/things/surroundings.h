#pragma once

#include <string>

namespace scalpmark::viewer {

/// The line that is on every picture.
[[nodiscard]] std::string caution_text();

}  // namespace scalpmark::viewer
