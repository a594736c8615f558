#include <Eigen/Geometry>
#include <catch2/catch.hpp>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iomanip>
#include <vector>

#include "geometry/field/sphere_field.h"
#include "models/coils/coil_library.h"
#include "tests/support/template_head.h"

using namespace scalpmark;
using namespace scalpmark::geometry;
using Eigen::Vector3d;
using tests::reference_file;

namespace {

namespace fs = std::filesystem;

void put(std::ostream& out, const Vector3d& v) {
  out << ' ' << v.x() << ' ' << v.y() << ' ' << v.z();
}

/// What MNE-Python says of the points; see mne_sphere.py.
std::vector<Vector3d> by_mne(const Vector3d& centre, const std::vector<Turn>& turns,
                             const std::vector<Vector3d>& points) {
  const fs::path in = reference_file("mne_sphere.in"), out = reference_file("mne_sphere.out");
  {
    std::ofstream asked(in);
    asked << std::setprecision(17) << "sphere";
    put(asked, centre);
    for (const Turn& t : turns) {
      asked << "\nturn";
      put(asked, t.centre);
      put(asked, t.along);
      put(asked, t.across);
      asked << ' ' << t.radius_mm;
    }
    for (const Vector3d& p : points) {
      asked << "\npoint";
      put(asked, p);
    }
    asked << '\n';
  }
  const std::string command = "MNE_DONTWRITE_HOME=true PYTHONDONTWRITEBYTECODE=1 PYTHONPATH='" +
                              reference_file("python") + "' timeout 120 /usr/bin/python3 '" +
                              std::string(SCALPMARK_SOURCE_DIR) + "/tests/reference/mne_sphere.py' <'" +
                              in.string() + "' >'" + out.string() + "'";
  INFO("scripts/reference-data fetches MNE-Python into build/reference/python");
  REQUIRE(std::system(command.c_str()) == 0);  // NOLINT(cert-env33-c): a test
  std::vector<Vector3d> fields;
  std::ifstream said(out);
  for (Vector3d e; said >> e.x() >> e.y() >> e.z();) fields.push_back(e);
  fs::remove(in);
  fs::remove(out);
  return fields;
}

}  // namespace

// MNE-Python 1.3 (Debian python3-mne, Gramfort et al. 2013, Front Neurosci 7:267), its sphere model after
// Sarvas 1987, as a magnetometer's flux: by reciprocity the coil's induced field along a unit dipole is minus
// the flux that the dipole sends through the coil. It sums over places of the discs, we go around their rims.
TEST_CASE("every coil that ships induces in a sphere what MNE-Python's flux says, within 1e-5") {
  const Vector3d centre(3, -12, 25);
  for (const Coil& coil : models::coils()) {
    CoilFrame frame;
    const Vector3d out = Vector3d(-0.6, 0.2, 0.7).normalized();
    frame.normal = (out + Vector3d(0.08, 0.02, -0.05)).normalized();
    frame.front = frame.normal.cross(Vector3d(0.5, 0.4, 0.3)).normalized();
    frame.origin = centre + 92 * out;
    const std::vector<Turn> turns = turns_of(coil, frame);
    std::vector<Vector3d> points;
    for (const double depth : {6.0, 15.0, 20.0, 35.0})
      for (int i = 0; i < 6; ++i) {
        const Eigen::Quaterniond turn =
            Eigen::AngleAxisd(0.09 * i * i, frame.front) * Eigen::AngleAxisd(0.13 * i, frame.right());
        points.emplace_back(centre + (88 - depth) * (turn * out));
      }
    const std::vector<Vector3d> theirs = by_mne(centre, turns, points);
    REQUIRE(theirs.size() == points.size());
    const SphereField field(centre, turns);
    double strongest = 0;
    for (const Vector3d& e : theirs) strongest = std::max(strongest, e.norm());
    CHECK(strongest > 0.1);
    for (std::size_t i = 0; i < points.size(); ++i) {
      CAPTURE(coil.model, i);
      CHECK((field.at(points[i]) - theirs[i]).norm() < 1e-5 * theirs[i].norm() + 1e-7 * strongest);
    }
  }
}
