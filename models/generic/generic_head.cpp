#include "models/generic/generic_head.h"

#include <algorithm>

#include "models/generic/half_mesh.h"

namespace scalpmark::models {

namespace {

using Eigen::Vector3d;
using geometry::Surface;
using geometry::SurfacePoint;

/// A corner of the triangles as a skin point.
SurfacePoint corner(const Surface& skin, int vertex) {
  const int face = skin.face_at(vertex);
  const auto& t = skin.triangle(face);
  return {face, Vector3d::Unit(std::find(t.begin(), t.end(), vertex) - t.begin())};
}

SurfacePoint corner_at(const Surface& skin, const Vector3d& place) {
  const auto& all = skin.vertices();
  return corner(skin, static_cast<int>(std::find(all.begin(), all.end(), place) - all.begin()));
}

}  // namespace

geometry::Head fresh_generic_head() {
  const generic::HalfMesh half = generic::compiled_in_half();
  Surface skin = generic::mirrored(half);
  // Its points are corners and its top the highest of them, so that no search tree is built for them.
  const Vector3d right = half.vertices[static_cast<size_t>(half.right_tragus)];
  geometry::SkinFiducials points;
  points.nasion = corner(skin, half.nasion);
  points.inion = corner(skin, half.inion);
  points.right_tragus = corner(skin, half.right_tragus);
  points.left_tragus = corner_at(skin, {-right.x(), right.y(), right.z()});
  const auto& all = skin.vertices();
  const auto highest = std::max_element(all.begin(), all.end(),
                                        [](const Vector3d& a, const Vector3d& b) { return a.z() < b.z(); });
  const SurfacePoint top = corner(skin, static_cast<int>(highest - all.begin()));
  return {std::move(skin), points, top};
}

const geometry::Head& generic_head() {
  static const geometry::Head head = fresh_generic_head();
  return head;
}

}  // namespace scalpmark::models
