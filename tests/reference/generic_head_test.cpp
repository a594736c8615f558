// The generic head's four points against a published head's: standard_1005.elc of Debian's python3-mne.
#include "models/generic/generic_head.h"

#include <Eigen/Geometry>
#include <catch2/catch.hpp>

#include "tests/support/electrode_table.h"
#include "tests/support/template_head.h"

using namespace scalpmark;
using Eigen::Vector3d;

namespace {

/// How the tragi lie to the line from inion to nasion, whatever way the head is nodded.
struct Tragi {
  double below_mm;  ///< under the line, straight
  double along;     ///< from the inion, as a part of the line's length
};

Tragi tragi(const geometry::Fiducials& f) {
  const Vector3d line = f.nasion - f.inion, middle = 0.5 * (f.left_tragus + f.right_tragus);
  const Vector3d across = f.right_tragus - f.left_tragus;
  const Vector3d up = across.cross(line).normalized();
  return {(f.inion - middle).dot(up), (middle - f.inion).dot(line) / line.squaredNorm()};
}

}  // namespace

TEST_CASE("the generic head's inion and nasion lie above the tragi by as much as the published head's") {
  const auto table = tests::read_electrode_table(tests::reference_file("standard_1005.elc"));
  REQUIRE(table.contains("Iz"));
  const Tragi published = tragi({table.at("Nz"), table.at("Iz"), table.at("LPA"), table.at("RPA")});
  const Tragi own = tragi(models::generic_head().fiducials().at);
  // That head is 8 % longer, so its heights are compared at the generic head's length. People's head heights
  // from the tragus spread by about 6 mm, one standard deviation (large anthropometric surveys, memory).
  const double length_mm =
      (models::generic_head().fiducials().at.nasion - models::generic_head().fiducials().at.inion).norm();
  const double published_length_mm = (table.at("Nz") - table.at("Iz")).norm();
  CHECK(own.below_mm == Approx(published.below_mm * length_mm / published_length_mm).margin(6));
  // 5 mm along the line: what two people's fingers differ by (practice, no source).
  CHECK(own.along == Approx(published.along).margin(5 / length_mm));
}
