#pragma once

#include <cstddef>
#include <string>

namespace scalpmark::viewer {

// Text for a terminal, in columns and lines of at most 80 characters.

/// Filled up with spaces behind; one at least.
[[nodiscard]] std::string padded(const std::string& text, std::size_t width);
/// Filled up with spaces in front.
[[nodiscard]] std::string to_the_right(const std::string& text, std::size_t width);
/// Broken between words, each line with its end.
[[nodiscard]] std::string wrapped_text(const std::string& text);

}  // namespace scalpmark::viewer
