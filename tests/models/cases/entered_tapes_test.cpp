// Tapes entered for a head whose skin is known: the caution goes by them and names the one that slipped.
#include <array>
#include <catch2/catch.hpp>
#include <filesystem>
#include <string>

#include "geometry/plan/solve.h"
#include "models/cases/case_file.h"
#include "models/cases/case_head.h"
#include "models/generic/generic_head.h"
#include "models/heads/load_head.h"
#include "tests/support/mesh_writers.h"
#include "tests/support/temporary_folder.h"

using namespace scalpmark;
using geometry::Case;
using geometry::Head;
using geometry::TapeKind;

namespace {

/// Tapes of a head of this one's shape and so many times its size.
void check_slips(const Head& head, Case the_case, double times) {
  geometry::TapeMeasures own = head.tapes();
  for (double* mm : {&own.nasion_inion_mm, &own.tragus_tragus_mm, &own.circumference_mm}) *mm *= times;
  const auto plan_with = [&](double nasion_inion, double tragus_tragus, double circumference) {
    the_case.tape_mm = {nasion_inion, tragus_tragus, circumference};
    return geometry::solve(head, the_case, geometry::TapeDistances::left_out);
  };
  CHECK_FALSE(plan_with(own.nasion_inion_mm, own.tragus_tragus_mm, own.circumference_mm).size_caution);
  const auto slipped = plan_with(own.nasion_inion_mm, own.tragus_tragus_mm - 60, own.circumference_mm);
  REQUIRE(slipped.size_caution);
  INFO(english(slipped.size_caution->sentence));
  REQUIRE(slipped.size_caution->again);
  CHECK(slipped.size_caution->again->tape == TapeKind::tragus_tragus);
  CHECK(*slipped.size_caution->again->about_mm == Approx(own.tragus_tragus_mm).margin(20));
  // And the tape is told from the head's own.
  bool told = false;
  for (const auto& w : slipped.warnings)
    told = told || english(w).find("The tragus-tragus tape was entered as") != std::string::npos;
  CHECK(told);
}

}  // namespace

// The template's space is larger than the people it was made of (MNI space, memory): this head's tapes are
// those of hardly any adult, and that is said.
TEST_CASE("a tape that slipped is named on the head of an MRI, and tapes of a usual size are no caution",
          "[slow]") {
  const auto read = models::read_case(SCALPMARK_SOURCE_DIR "/models/demo/template-mri.json");
  const Head head = models::load_head(read).head;
  check_slips(head, read.the_case, 0.92);
  Case own = read.the_case;
  own.tape_mm = {head.tapes().nasion_inion_mm, head.tapes().tragus_tragus_mm, head.tapes().circumference_mm};
  CHECK(geometry::solve(head, own, geometry::TapeDistances::left_out).size_caution);
}

TEST_CASE("a tape that slipped is named on a scan, and its own tapes are no caution") {
  const tests::TemporaryFolder folder;
  const Head& head = models::generic_head();
  tests::write_bytes(folder / "scan.ply", tests::ply_bytes(tests::RawMesh(head.skin())));
  models::CaseFile scan = models::default_case();
  scan.head.kind = models::HeadKind::mesh;
  scan.head.file = (folder / "scan.ply").string();
  scan.head.unit = models::Unit::millimetre;
  scan.head.fiducials = head.fiducials().at;
  check_slips(models::load_head(scan).head, scan.the_case, 1);
}
