#pragma once

#include <string>

namespace scalpmark::viewer {

/// "25 November 2026", the computer's date today.
[[nodiscard]] std::string date_today();

}  // namespace scalpmark::viewer
