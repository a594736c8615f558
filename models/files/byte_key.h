#pragma once

#include <cstdint>
#include <string_view>

namespace scalpmark::models {

/// What an empty key starts as (FNV-1a, Fowler, Noll and Vo; memory).
inline constexpr std::uint64_t no_bytes = 0xcbf29ce484222325ULL;

/// A number that follows from bytes, and from what came before them: FNV-1a, eight bytes at a time where it
/// can. Against damage and mix-ups, not against forgers.
[[nodiscard]] std::uint64_t byte_key(std::string_view bytes, std::uint64_t before = no_bytes);

}  // namespace scalpmark::models
