#pragma once

#include <cstddef>
#include <cstdint>
#include <string_view>

namespace scalpmark::models {

/// What an empty key starts as (FNV-1a, Fowler, Noll and Vo; memory).
inline constexpr std::uint64_t no_bytes = 0xcbf29ce484222325ULL;

/// A number that follows from bytes, and from what came before them: FNV-1a, eight bytes at a time where it
/// can. Against damage and mix-ups, not against forgers.
[[nodiscard]] std::uint64_t byte_key(std::string_view bytes, std::uint64_t before = no_bytes);

/// How much of a file is read at a time for its key: a multiple of eight bytes, so that the key of the parts
/// is that of the whole.
inline constexpr std::size_t key_part_bytes = std::size_t{1} << 18U;

}  // namespace scalpmark::models
