#include "tests/support/template_head.h"

#include <stdexcept>

#include "models/coils/coil_library.h"
#include "models/mri/mri_file.h"
#include "tests/support/electrode_table.h"

namespace scalpmark::tests {

std::string reference_file(const std::string& name) {
  return std::string(SCALPMARK_SOURCE_DIR) + "/build/reference/" + name;
}

const geometry::Head& template_head() {
  static const geometry::Head head = [] {
    const auto table = read_electrode_table(reference_file("standard_1005.elc"));
    if (table.empty()) throw std::runtime_error("build/reference is empty: run scripts/reference-data first");
    auto read = models::read_mri(reference_file("ch2.nii.gz"));
    return geometry::Head(std::move(read.skin),
                          {table.at("Nz"), table.at("Iz"), table.at("LPA"), table.at("RPA")});
  }();
  return head;
}

geometry::Case template_case(geometry::MarkRule rule, geometry::Side side) {
  geometry::Case c;
  c.coil.model = models::coil("figure-8-70");
  geometry::use_one_rule(c, rule);
  c.side = side;
  return c;
}

}  // namespace scalpmark::tests
