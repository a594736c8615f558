#pragma once

#include <filesystem>

namespace scalpmark::models {

/// Where the program `scalpmark` is: the one that runs, or the one beside it (a test, a benchmark).
[[nodiscard]] std::filesystem::path own_program();

/// Where the program is that `scalpmark` becomes for all but what it does alone (viewer/main.cpp).
[[nodiscard]] std::filesystem::path whole_program();

}  // namespace scalpmark::models
