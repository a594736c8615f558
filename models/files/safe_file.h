#pragma once

#include <filesystem>
#include <string>
#include <string_view>

namespace scalpmark::models {

/// Writes a file whole or not at all: beside its target, synced, then renamed over the old one. A new file
/// can be read and written by its owner alone (0600); one that was there keeps its permissions. Through a
/// link the bytes go to where it leads, if that is a plain file of this user. A file with several names (hard
/// links) gets the new bytes under this name alone. Parts that runs now dead have left in the folder are
/// removed. Refuses (ModelError) a folder that is missing or not writable, a target that is a folder, a link
/// to nothing or to another user's file, a full disk; the old file is then untouched and nothing is left
/// beside it.
void write_whole(const std::filesystem::path& file, std::string_view bytes);

/// The whole file, at most `limit` bytes. Refuses (ModelError) missing, a folder, unreadable, longer.
[[nodiscard]] std::string read_whole(const std::filesystem::path& file, std::size_t limit);

}  // namespace scalpmark::models
