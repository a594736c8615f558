#pragma once

#include <cstddef>
#include <cstdint>
#include <filesystem>

namespace scalpmark::models {

/// byte_key (byte_key.h) of a whole file after `before`, read piece by piece. Refuses what read_whole
/// (safe_file.h) does.
[[nodiscard]] std::uint64_t key_of_file(const std::filesystem::path& file, std::size_t limit,
                                        std::uint64_t before);

}  // namespace scalpmark::models
