#pragma once

#include <optional>

namespace scalpmark::viewer {

/// Does what the command line asks for if it needs none of the libraries that read, draw and print, and
/// returns what the program ends with: `solve`, once the template's brain is kept. Empty, with nothing done,
/// for all else, errors of the command line among it. Linking those libraries takes longer than a plan.
[[nodiscard]] std::optional<int> run_alone(int argc, const char* const* argv) noexcept;

}  // namespace scalpmark::viewer
