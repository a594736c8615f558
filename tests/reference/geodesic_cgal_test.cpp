// Our shortest paths and distance fields against the exact geodesics of CGAL's package "Triangulated Surface
// Mesh Shortest Paths" (CGAL 5.5, Debian libcgal-dev), an independent implementation of Xin and Wang 2009,
// "Improving Chen and Han's algorithm on the discrete geodesic problem", ACM Trans Graph 28:104.
#include <algorithm>
#include <catch2/catch.hpp>
#include <iostream>
#include <random>

#include "geometry/paths/distance_field.h"
#include "geometry/paths/shortest_path.h"
#include "models/meshes/thin_triangles.h"
#include "models/mri/mri_file.h"
#include "tests/support/cgal_mesh.h"
#include "tests/support/shapes.h"

using namespace scalpmark;
using geometry::Surface;
using geometry::SurfacePoint;

namespace {

using Mesh = tests::CgalMesh;
using Exact = tests::CgalPaths;

/// Our weights in the order of CGAL's face location (target of the face's halfedge's source first).
Exact::Face_location cgal_location(const Mesh& mesh, const Surface& skin, const SurfacePoint& p) {
  const Mesh::Face_index face(static_cast<unsigned>(p.face));
  auto h = mesh.halfedge(face);
  Exact::Barycentric_coordinates weights{0, 0, 0};
  for (size_t i = 0; i < 3; ++i, h = mesh.next(h)) {
    const auto corner = static_cast<int>(mesh.source(h).idx());
    for (int k = 0; k < 3; ++k)
      if (skin.triangle(p.face)[static_cast<size_t>(k)] == corner) weights[i] = p.weights[k];
  }
  return {face, weights};
}

SurfacePoint random_point(const Surface& skin, std::mt19937& random) {
  std::uniform_real_distribution<double> unit(0.02, 1);
  const auto faces = static_cast<int>(skin.triangles().size());
  Eigen::Vector3d w(unit(random), unit(random), unit(random));
  return {std::uniform_int_distribution<int>(0, faces - 1)(random), w / w.sum()};
}

struct Difference {
  double path_mm = 0, distance_mm = 0, field_mm = 0;
};

/// The largest differences over `sources` x `targets` random pairs.
Difference compare(const Surface& skin, int sources, int targets, unsigned seed) {
  const Mesh mesh = tests::cgal_mesh(skin);
  std::mt19937 random(seed);
  Difference worst;
  for (int s = 0; s < sources; ++s) {
    const SurfacePoint from = random_point(skin, random);
    Exact exact(mesh);
    exact.add_source_point(cgal_location(mesh, skin, from));
    const geometry::DistanceField field(skin, from);
    std::vector<SurfacePoint> to;
    for (int t = 0; t < targets; ++t) to.push_back(random_point(skin, random));
    const auto lengths = geometry::shortest_distances(skin, from, to);
    for (size_t t = 0; t < to.size(); ++t) {
      const auto at = cgal_location(mesh, skin, to[t]);
      const double truth = exact.shortest_distance_to_source_points(at.first, at.second).first;
      REQUIRE(truth > 0);
      const auto off = [&](double mm) { return std::abs(mm - truth); };
      worst.path_mm = std::max(worst.path_mm, off(geometry::shortest_path(skin, from, to[t]).length_mm));
      worst.distance_mm = std::max(worst.distance_mm, off(lengths[t]));
      worst.field_mm = std::max(worst.field_mm, off(field.at(skin, to[t])));
    }
  }
  return worst;
}

void require_equal(const Difference& worst, double field_mm = 0.01) {
  CAPTURE(worst.path_mm, worst.distance_mm, worst.field_mm);
  CHECK(worst.path_mm <= 0.01);
  CHECK(worst.distance_mm <= 0.01);
  CHECK(worst.field_mm <= field_mm);
}

}  // namespace

TEST_CASE("shortest paths on a sphere are CGAL's") {
  require_equal(compare(tests::sphere(90, 5), 10, 20, 1));
}

TEST_CASE("shortest paths on a head-sized ellipsoid are CGAL's") {
  require_equal(compare(tests::sphere(1, 5, {75, 98, 88}), 10, 20, 2));
}

TEST_CASE("shortest paths on a bumpy head, with saddles everywhere, are CGAL's") {
  auto skin = tests::sphere(1, 4, {75, 98, 88});
  auto vertices = skin.vertices();
  for (auto& v : vertices)
    v *= 1 + 0.03 * std::sin(v.x() / 7) * std::sin(v.y() / 6 + 1) * std::sin(v.z() / 8 + 2);
  // Within a face the field is looked up, not exact, and its error goes with the triangles' size: here 10 mm,
  // far coarser than any head's.
  require_equal(compare(skin.moved(std::move(vertices)), 10, 20, 4), 0.3);
}

TEST_CASE("shortest paths on the template head are CGAL's") {
  // ch2.nii.gz of the Debian package mricron-data; its skin, thinned because CGAL keeps every window it
  // makes: gigabytes on the full skin.
  const auto skin = models::read_mri("/usr/share/mricron/templates/ch2.nii.gz").skin;
  const auto thin = models::thin_triangles({skin.vertices(), skin.triangles()}, 20000);
  REQUIRE(thin.triangles.size() <= 20000);
  const Difference worst = compare({thin.vertices, thin.triangles}, 10, 20, 7);
  require_equal(worst);
  std::cout << "template head, 20 000 triangles, 200 pairs against CGAL: path off by at most "
            << worst.path_mm << " mm, field " << worst.field_mm << " mm\n";
}

TEST_CASE("a distance field on the full template head is as good as its exact lengths") {
  const auto skin = models::read_mri("/usr/share/mricron/templates/ch2.nii.gz").skin;
  std::mt19937 random(8);
  const SurfacePoint from = random_point(skin, random);
  const geometry::DistanceField field(skin, from);
  std::vector<SurfacePoint> to;
  for (int i = 0; i < 200; ++i) to.push_back(random_point(skin, random));
  const auto exact = geometry::shortest_distances(skin, from, to);
  double worst = 0, sum = 0;
  for (size_t i = 0; i < to.size(); ++i) {
    const double off = std::abs(field.at(skin, to[i]) - exact[i]);
    worst = std::max(worst, off);
    sum += off;
  }
  std::cout << "template head, " << skin.triangles().size() << " triangles, 200 points: field off by "
            << sum / 200 << " mm on average, at most " << worst << " mm\n";
  CHECK(sum / 200 < 0.01);
  CHECK(worst < 0.05);  // in the folds of ears and nose, where fronts from several bends meet within a face
}
