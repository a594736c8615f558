#pragma once

#include <functional>

namespace scalpmark::viewer {

// What the program ends with.
inline constexpr int done = 0, failed = 1, misunderstood = 2;

/// What `run` returns; where it throws, `misunderstood` for a UsageError, else `failed`, and one sentence on
/// stderr.
[[nodiscard]] int exit_code(const std::function<int()>& run) noexcept;

}  // namespace scalpmark::viewer
