#include "models/cases/case_inputs.h"

#include "models/files/error.h"

namespace scalpmark::models {

namespace fs = std::filesystem;

std::vector<Input> inputs_of(const fs::path& case_file, const CaseFile& read, const TemplateFiles& files) {
  std::vector<Input> all{{Message::of("the case"), case_file}};
  const HeadSource& head = read.head;
  if (head.kind != HeadKind::generic)
    all.push_back({head.kind == HeadKind::mesh ? Message::of("the scan") : Message::of("the MRI"),
                   head.file.is_absolute() ? head.file : read.folder / head.file});
  for (const fs::path& file : files.read()) all.push_back({Message::of("a file of the template"), file});
  return all;
}

}  // namespace scalpmark::models
