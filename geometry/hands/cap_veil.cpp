#include "geometry/hands/cap_veil.h"

#include <array>
#include <cmath>
#include <map>
#include <utility>

#include "geometry/head/vertex.h"
#include "geometry/tapes/tape.h"

namespace scalpmark::geometry {

using Eigen::Vector3d;

namespace {

/// Out of the skin, so that one does not shine through the other; less than marks are lifted.
constexpr double cloth_over_skin_mm = 0.5;
/// The skin leaves the sphere by less than this times the sine of the slip.
constexpr double near_brim_mm = 20;

/// How far a corner lay above the brim's plane before the slip.
std::vector<double> heights_inside(const Head& head, const Cap& cap, const CapSlip& slip) {
  const Surface& skin = head.skin();
  const CapSlip back = undone(slip);
  std::vector<double> heights(skin.vertices().size());
  for (size_t v = 0; v < heights.size(); ++v) {
    const Vector3d& at = skin.vertices()[v];
    heights[v] = cap.brim.height(turned_about(head.axes(), cap.sphere, at, back));
    if (slip == CapSlip{} || std::abs(heights[v]) > near_brim_mm) continue;
    const int face = skin.face_at(static_cast<int>(v));
    if (face < 0) continue;
    SurfacePoint p{face, Vector3d::Zero()};
    for (int k = 0; k < 3; ++k)
      if (skin.triangle(face)[static_cast<size_t>(k)] == static_cast<int>(v)) p.weights[k] = 1;
    heights[v] = cap.brim.height(skin.position(slipped(head, cap.sphere, p, back)));
  }
  return heights;
}

/// Cuts triangles off at height 0, with one new corner for each edge that is cut.
class Cutter {
public:
  Cutter(const Surface& skin, const std::vector<double>& heights) : skin_(skin), heights_(heights) {}

  [[nodiscard]] Surface above() {
    for (const Triangle& t : skin_.triangles()) {
      std::vector<int> rim;  // of what is left of it, counter-clockwise
      for (size_t k = 0; k < 3; ++k) {
        const int a = t[k], b = t[(k + 1) % 3];
        if (inside(a)) rim.push_back(corner(a));
        if (inside(a) != inside(b)) rim.push_back(on_edge(a, b));
      }
      for (size_t k = 2; k < rim.size(); ++k) triangles_.push_back({rim[0], rim[k - 1], rim[k]});
    }
    return {std::move(corners_), std::move(triangles_)};
  }

private:
  [[nodiscard]] double height(int v) const { return heights_[static_cast<size_t>(v)]; }
  [[nodiscard]] bool inside(int v) const { return height(v) >= 0; }
  [[nodiscard]] Vector3d lifted(int v) const {
    return skin_.vertex(v) + cloth_over_skin_mm * skin_.vertex_normals()[static_cast<size_t>(v)];
  }
  int add(const Vector3d& at) {
    corners_.push_back(at);
    return static_cast<int>(corners_.size()) - 1;
  }
  int corner(int v) {
    const auto [place, fresh] = known_.try_emplace({v, v}, 0);
    if (fresh) place->second = add(lifted(v));
    return place->second;
  }
  int on_edge(int a, int b) {
    const auto [place, fresh] = known_.try_emplace(std::minmax(a, b), 0);
    if (fresh) place->second = add(lifted(a) + height(a) / (height(a) - height(b)) * (lifted(b) - lifted(a)));
    return place->second;
  }

  const Surface& skin_;
  const std::vector<double>& heights_;
  std::vector<Vector3d> corners_;
  std::vector<Triangle> triangles_;
  std::map<std::pair<int, int>, int> known_;
};

std::vector<Vector3d> arrow_line(const Head& head, const Cap& cap, const CapSlip& slip) {
  const Tape& midline = head.vertex_tapes().midline;
  const double length_mm = midline.fraction_of(cap.front_at) * midline.length_mm();
  constexpr double corner_every_mm = 2;
  const int steps = std::max(2, static_cast<int>(length_mm / corner_every_mm));
  std::vector<Vector3d> line;
  for (int i = 0; i <= steps; ++i) {
    const SectionPoint p = midline.at_mm(length_mm * (steps - i) / steps);
    line.push_back(head.skin().position(slipped(head, cap.sphere, p.on_skin, slip)));
  }
  return line;
}

}  // namespace

CapVeil cap_veil(const Head& head, const Cap& cap, const CapSlip& slip) {
  const std::vector<double> heights = heights_inside(head, cap, slip);
  return {Cutter(head.skin(), heights).above(), brim_line(head, cap, slip), arrow_line(head, cap, slip)};
}

}  // namespace scalpmark::geometry
