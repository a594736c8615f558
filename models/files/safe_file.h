#pragma once

#include <filesystem>
#include <string>
#include <string_view>

namespace scalpmark::models {

/// Writes a file whole or not at all: to a temporary beside it, synced, then renamed over the old one.
/// Refuses (ModelError) a folder that is missing or not writable, a target that is a folder, a full disk; the
/// old file is then untouched and the temporary gone. `mode` holds for a new file.
void write_whole(const std::filesystem::path& file, std::string_view bytes, unsigned mode = 0644);

/// The whole file, at most `limit` bytes. Refuses (ModelError) missing, a folder, unreadable, longer.
[[nodiscard]] std::string read_whole(const std::filesystem::path& file, std::size_t limit);

}  // namespace scalpmark::models
