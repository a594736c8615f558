#pragma once

#include <filesystem>
#include <nlohmann/json.hpp>

#include "models/files/strict_json.h"
#include "models/heads/head_source.h"

namespace scalpmark::models {

/// The group "head" of a file: where a head comes from. Refuses (ModelError) as JsonGroup does, and what does
/// not go together.
[[nodiscard]] HeadSource read_head_source(const JsonGroup& top);
/// The same, written. Refuses (ModelError) a head without its four points.
[[nodiscard]] nlohmann::ordered_json head_source_json(const HeadSource& head);

/// The folder of a file, whole.
[[nodiscard]] std::filesystem::path folder_of(const std::filesystem::path& file);
/// The head with its file, named relative to `from`, named so that it is found from `folder`: beside it where
/// it lies there, else by its whole path.
[[nodiscard]] HeadSource found_from(const HeadSource& head, const std::filesystem::path& from,
                                    const std::filesystem::path& folder);

}  // namespace scalpmark::models
