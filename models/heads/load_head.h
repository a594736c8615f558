#pragma once

#include <filesystem>
#include <memory>
#include <string>
#include <vector>

#include "geometry/base/message.h"
#include "geometry/brain/cortex.h"
#include "geometry/head/head.h"
#include "geometry/head/scale.h"
#include "models/heads/head_source.h"
#include "models/heads/skin_reading.h"
#include "models/meshes/skin_import.h"

namespace scalpmark::models {

struct LoadedHead {
  geometry::Head head;
  geometry::Message description;         ///< "generic head, scaled to the tapes", "MRI ch2.nii.gz", ...
  std::vector<geometry::Message> notes;  ///< of the import, one sentence each
  std::shared_ptr<const geometry::Cortex> cortex = {};  ///< under the head; null for a head without
};

/// A head from its source: generic and scaled to these tapes, or read from its file (by `read`; a relative
/// one starts in `folder`) with the source's fiducials. Passes on the refusals of what it uses (ModelError,
/// geometry::GeometryError).
[[nodiscard]] LoadedHead load_head(const HeadSource& source, const std::filesystem::path& folder,
                                   const geometry::MeasuredTapes& tapes, const Progress& progress = {},
                                   const SkinReading& read = read_skin);

}  // namespace scalpmark::models
