#pragma once

#include <cstddef>
#include <filesystem>

#include "models/files/error.h"
#include "models/files/plain_file.h"

namespace scalpmark::models {

// Reading a file that a person named, with what is said where it cannot be read.

/// What went wrong, in words that say what to do.
[[nodiscard]] Message why(int error);

[[nodiscard]] ModelError too_long(const std::filesystem::path& file, std::size_t limit);

/// Refuses what is no plain file, or longer.
void check_readable(const PlainFile& opened, const std::filesystem::path& file, std::size_t limit);

/// The next bytes, at most so many; 0 at the end.
[[nodiscard]] std::size_t read_some(PlainFile& opened, const std::filesystem::path& file, char* into,
                                    std::size_t most);

}  // namespace scalpmark::models
