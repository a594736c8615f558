#include "models/cases/case_inputs.h"

#include <algorithm>
#include <catch2/catch.hpp>

using namespace scalpmark;
namespace fs = std::filesystem;

TEST_CASE("a case reads itself, its head beside it, and the template's files") {
  models::CaseFile read = models::default_case();
  read.folder = "/patients/one";
  models::TemplateFiles files;
  files.folder = "/templates";
  const auto names = [&] {
    std::vector<fs::path> all;
    for (const auto& input : models::inputs_of("/patients/one/case.json", read, files))
      all.push_back(input.file);
    return all;
  };
  const auto has = [&](const char* name) {
    const auto all = names();
    return std::find(all.begin(), all.end(), name) != all.end();
  };
  CHECK(has("/patients/one/case.json"));
  CHECK(has("/templates/ch2.nii.gz"));
  CHECK(has("/templates/ch2bet.nii.gz"));
  CHECK(has("/templates/brodmann.nii.gz"));
  CHECK(has("/templates/aal.nii.gz"));
  CHECK(has("/templates/aal.nii.txt"));
  CHECK(names().size() == 6);  // the generic head is built in
  read.head.kind = models::HeadKind::mri;
  read.head.file = "t1.nii.gz";
  CHECK(has("/patients/one/t1.nii.gz"));
  read.head.file = "/elsewhere/t1.nii.gz";
  CHECK(has("/elsewhere/t1.nii.gz"));
  read.head.kind = models::HeadKind::mesh;
  CHECK(names().size() == 7);
}
