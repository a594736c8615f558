#include "models/cases/case_inputs.h"

namespace scalpmark::models {

namespace fs = std::filesystem;

std::vector<Input> inputs_of(const fs::path& case_file, const CaseFile& read, const TemplateFiles& files) {
  std::vector<Input> all{{"the case", case_file}};
  const HeadSource& head = read.head;
  if (head.kind != HeadKind::generic)
    all.push_back({head.kind == HeadKind::mesh ? "the scan" : "the MRI",
                   head.file.is_absolute() ? head.file : read.folder / head.file});
  for (const fs::path& file : files.read()) all.push_back({"a file of the template", file});
  return all;
}

}  // namespace scalpmark::models
