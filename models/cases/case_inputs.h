#pragma once

#include <filesystem>
#include <vector>

#include "models/brain/template_brain.h"
#include "models/cases/case_file.h"
#include "models/files/output_guard.h"

namespace scalpmark::models {

/// What a run on a case reads: its file, its head's, and the template's that its brain is made of.
[[nodiscard]] std::vector<Input> inputs_of(const std::filesystem::path& case_file, const CaseFile& read,
                                           const TemplateFiles& files = {});

}  // namespace scalpmark::models
