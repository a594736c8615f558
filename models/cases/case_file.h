#pragma once

#include <filesystem>
#include <optional>
#include <string>

#include "geometry/head/fiducials.h"
#include "geometry/plan/case.h"
#include "models/meshes/mesh_file.h"

namespace scalpmark::models {

enum class HeadKind { generic, mesh, mri };

/// Where the head of a case comes from.
struct HeadSource {
  HeadKind kind = HeadKind::generic;
  std::filesystem::path file;                    ///< mesh, mri: as written in the case (relative to it)
  std::optional<Unit> unit;                      ///< mesh
  std::optional<geometry::Fiducials> fiducials;  ///< mesh, mri
};

/// A case as kept in a file (format scalpmark-case, version 1; models/schema/case.schema.json).
struct CaseFile {
  HeadSource head;
  geometry::Case entered;
  std::filesystem::path folder;  ///< relative paths start here
};

/// The case everyone starts from: generic head, default protocol (models/data/protocols/default.json,
/// compiled in).
[[nodiscard]] CaseFile default_case();

/// Refuses (ModelError, naming file and key): missing, a folder, over 1 MB, not JSON, nested deeper than 16,
/// wrong format or version, unknown key, wrong type, a number that is not finite, a setting out of range.
[[nodiscard]] CaseFile read_case(const std::filesystem::path& file);
[[nodiscard]] CaseFile parse_case(const std::string& json, const std::filesystem::path& folder,
                                  const std::string& name);

[[nodiscard]] std::string case_json(const CaseFile& kept);
/// Whole or not at all; mode 0600.
void write_case(const std::filesystem::path& file, const CaseFile& kept);

}  // namespace scalpmark::models
