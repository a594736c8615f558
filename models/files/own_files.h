#pragma once

#include <filesystem>
#include <string>
#include <string_view>

namespace scalpmark::models {

/// What a file is, as far as this program writes such: "scalpmark-case", "scalpmark-plan" and so on for JSON
/// (its "format"), "scalpmark-png", "scalpmark-pdf", "scalpmark-ply", "scalpmark-glb", "scalpmark-stl" for
/// what says that it was made here. Empty for anything else. Told from the first 4 KB.
[[nodiscard]] std::string own_format(std::string_view first_bytes);

/// The same of a file; "nothing" for an empty one. Empty for what cannot be read.
[[nodiscard]] std::string own_format_of(const std::filesystem::path& file);

/// The comment in a PLY by which own_format() knows it.
inline constexpr std::string_view own_ply_comment = "comment skin surface, mm";

/// The "Software" text of a PNG, and the creator of a PDF, by which own_format() knows them.
inline constexpr const char* own_name = "Scalpmark";

}  // namespace scalpmark::models
