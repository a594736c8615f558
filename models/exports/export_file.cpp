#include "models/exports/export_file.h"

#include <algorithm>
#include <cctype>

namespace scalpmark::models {

std::optional<ExportFormat> export_format_of(const std::filesystem::path& file) {
  std::string ending = file.extension().string();
  std::transform(ending.begin(), ending.end(), ending.begin(),
                 [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
  if (ending == ".glb") return ExportFormat::glb;
  if (ending == ".ply") return ExportFormat::ply;
  if (ending == ".stl") return ExportFormat::stl;
  return {};
}

std::string own_format_of(ExportFormat format) {
  switch (format) {
    case ExportFormat::glb:
      return "scalpmark-glb";
    case ExportFormat::ply:
      return "scalpmark-ply";
    case ExportFormat::stl:
      return "scalpmark-stl";
  }
  return {};
}

std::string export_bytes(ExportFormat format, const ExportHead& head, const std::optional<FlatCut>& cut) {
  switch (format) {
    case ExportFormat::glb:
      return glb_bytes(head);
    case ExportFormat::ply:
      return ply_bytes(head);
    case ExportFormat::stl:
      return stl_bytes(head, cut);
  }
  return {};
}

}  // namespace scalpmark::models
