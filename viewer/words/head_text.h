#pragma once

#include <string>

#include "models/cases/case_file.h"
#include "models/heads/load_head.h"

namespace scalpmark::viewer {

/// Which head it is and what it is worth, for pictures: "generic head, scaled to the tapes: a drawing, not
/// the patient", "MRI ch2.nii.gz".
[[nodiscard]] std::string head_in_words(const models::CaseFile& case_file, const models::LoadedHead& loaded);

}  // namespace scalpmark::viewer
