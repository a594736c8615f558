#pragma once

#include <cstdint>
#include <filesystem>
#include <optional>

#include "geometry/brain/cortex.h"

namespace scalpmark::models {

/// The template brain as kept in `folder` under `key`; empty when there is none, or it is damaged or of
/// another version of this program. An empty folder holds nothing.
[[nodiscard]] std::optional<geometry::TemplateBrain> read_template_cache(const std::filesystem::path& folder,
                                                                         std::uint64_t key);

/// Keeps it there, whole or not at all, readable by this user only; older ones go. False, and never an
/// exception, for what cannot be kept: it is made again next time.
bool write_template_cache(const std::filesystem::path& folder, std::uint64_t key,
                          const geometry::TemplateBrain& brain) noexcept;

}  // namespace scalpmark::models
