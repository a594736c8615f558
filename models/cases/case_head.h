#pragma once

#include "models/cases/case_file.h"
#include "models/heads/load_head.h"

namespace scalpmark::models {

/// The head of a case (load_head). What was assumed in reading the case stands first in its notes.
[[nodiscard]] LoadedHead load_head(const CaseFile& case_file, const Progress& progress = {},
                                   const SkinReading& read = read_skin);

}  // namespace scalpmark::models
