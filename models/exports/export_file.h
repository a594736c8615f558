#pragma once

#include <filesystem>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "models/exports/export_head.h"

namespace scalpmark::models {

enum class ExportFormat { glb, ply, stl };

/// By the ending of a file's name (.glb, .ply, .stl; in capitals too); nothing for another.
[[nodiscard]] std::optional<ExportFormat> export_format_of(const std::filesystem::path& file);

/// What such a file is, as own_files.h says it: "scalpmark-glb", ...
[[nodiscard]] std::string own_format_of(ExportFormat format);

/// A plane that a print is cut flat at: what lies over it stays.
struct FlatCut {
  Eigen::Vector3d at = Eigen::Vector3d::Zero(), up = Eigen::Vector3d::UnitZ();
};

/// glTF 2.0 in one binary file: a node for the skin and one for each thing, by its name and in its colour,
/// under one that turns the head's frame into glTF's (metres, +Y up, +Z to the front). By Assimp. Refuses
/// (ModelError) what Assimp cannot write.
[[nodiscard]] std::string glb_bytes(const ExportHead& head);

/// Binary PLY, mm in the head's frame, a colour at each corner; the skin first, then all things, each a piece
/// of its own.
[[nodiscard]] std::string ply_bytes(const ExportHead& head);

/// Binary STL for a printer, mm at true size: the skin, closed, its marks standing out of it
/// (raised_marks.h); where a cut is given, only what lies over it, on a flat underside, with the marks that
/// are clear of it. Without coil and tapes, which no printer could leave in the air. Refuses what cut_flat
/// refuses.
[[nodiscard]] std::string stl_bytes(const ExportHead& head, const std::optional<FlatCut>& cut = {});

[[nodiscard]] std::string export_bytes(ExportFormat format, const ExportHead& head,
                                       const std::optional<FlatCut>& cut = {});

}  // namespace scalpmark::models
