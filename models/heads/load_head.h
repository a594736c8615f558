#pragma once

#include <string>
#include <vector>

#include "geometry/head/head.h"
#include "models/cases/case_file.h"
#include "models/heads/skin_reading.h"
#include "models/meshes/skin_import.h"

namespace scalpmark::models {

struct LoadedHead {
  geometry::Head head;
  geometry::Message description;         ///< "generic head, scaled to the tapes", "MRI ch2.nii.gz", ...
  std::vector<geometry::Message> notes;  ///< of the import, one sentence each
};

/// The head of a case: generic and scaled to the case's tapes, or read from its file (by `read`) with the
/// case's fiducials. Passes on the refusals of what it uses (ModelError, geometry::GeometryError).
[[nodiscard]] LoadedHead load_head(const CaseFile& kept, const Progress& progress = {},
                                   const SkinReading& read = read_skin);

}  // namespace scalpmark::models
