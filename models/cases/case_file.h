#pragma once

#include <filesystem>
#include <string>
#include <vector>

#include "geometry/base/message.h"
#include "geometry/plan/case.h"
#include "models/heads/head_source.h"

namespace scalpmark::models {

/// A case as kept in a file (format scalpmark-case, versions 1 and 2; models/schema/case.schema.json).
struct CaseFile {
  HeadSource head;
  geometry::Case the_case;
  std::filesystem::path folder;          ///< relative paths start here
  std::vector<geometry::Message> notes;  ///< what was assumed in reading it, one sentence each

  friend bool operator==(const CaseFile&, const CaseFile&) = default;
};

/// The case everyone starts from: generic head, starting values (models/data/starting_values/default.json,
/// compiled in).
[[nodiscard]] CaseFile default_case();

/// Refuses (ModelError, naming file and key): missing, a folder, over 8 MB, not JSON, nested deeper than 16,
/// wrong format or version, unknown key, wrong type, a number that is not finite, a setting out of range.
[[nodiscard]] CaseFile read_case(const std::filesystem::path& file);
[[nodiscard]] CaseFile parse_case(const std::string& json, const std::filesystem::path& folder,
                                  const std::string& name);

/// As version 2.
[[nodiscard]] std::string case_json(const CaseFile& case_file);
/// Whole or not at all; mode 0600.
void write_case(const std::filesystem::path& file, const CaseFile& case_file);

}  // namespace scalpmark::models
