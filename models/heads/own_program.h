#pragma once

#include <filesystem>

namespace scalpmark::models {

/// Where the program `scalpmark` is: the one that runs, or the one beside it (a test, a benchmark).
[[nodiscard]] std::filesystem::path own_program();

}  // namespace scalpmark::models
