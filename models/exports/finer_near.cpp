#include "models/exports/finer_near.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>
#include <unordered_map>

#include "geometry/base/index.h"

namespace scalpmark::models {

using Eigen::Vector3d;
using geometry::at;
using geometry::Triangle;

namespace {

using Halves = std::unordered_map<std::uint64_t, int>;

std::uint64_t key_of_edge(int a, int b) {
  return static_cast<std::uint64_t>(std::min(a, b)) << 32U | static_cast<std::uint64_t>(std::max(a, b));
}

/// No further from the triangle than a ball reaches: by the ball about the triangle's middle, which never
/// says no wrongly.
bool may_reach(const Mesh& mesh, const Triangle& t, const FineBall& ball) {
  const Vector3d &a = mesh.vertices[at(t[0])], &b = mesh.vertices[at(t[1])], &c = mesh.vertices[at(t[2])];
  const Vector3d middle = (a + b + c) / 3;
  const double around = std::sqrt(
      std::max({(a - middle).squaredNorm(), (b - middle).squaredNorm(), (c - middle).squaredNorm()}));
  return (middle - ball.centre).norm() <= around + ball.radius_mm;
}

bool reaches_one(const Mesh& mesh, const Triangle& t, const std::vector<FineBall>& balls) {
  return std::any_of(balls.begin(), balls.end(), [&](const FineBall& b) { return may_reach(mesh, t, b); });
}

/// The triangle's edge k runs from corner k to the next.
std::size_t longest_edge(const Mesh& mesh, const Triangle& t, double& length_mm) {
  std::size_t longest = 0;
  length_mm = -1;
  for (std::size_t k = 0; k < 3; ++k) {
    const double l = (mesh.vertices[at(t[(k + 1) % 3])] - mesh.vertices[at(t[k])]).norm();
    if (l > length_mm) {
      length_mm = l;
      longest = k;
    }
  }
  return longest;
}

/// The parts of a triangle with some of its edges halved.
std::vector<Triangle> parts_of(const Triangle& t, const Halves& halves) {
  std::vector<Triangle> parts{t};
  for (std::size_t k = 0; k < 3; ++k) {
    const int a = t[k], b = t[(k + 1) % 3];
    const auto half = halves.find(key_of_edge(a, b));
    if (half == halves.end()) continue;
    // One part has the whole edge still.
    for (std::size_t i = 0; i < parts.size(); ++i) {
      Triangle& p = parts[i];
      const auto from = std::find(p.begin(), p.end(), a) - p.begin();
      if (from == 3 || p[static_cast<std::size_t>(from + 1) % 3] != b) continue;
      const int c = p[static_cast<std::size_t>(from + 2) % 3];
      p = {a, half->second, c};
      parts.push_back({half->second, b, c});
      break;
    }
  }
  return parts;
}

}  // namespace

std::vector<char> make_finer_near(Mesh& mesh, const std::vector<FineBall>& balls, double edge_mm) {
  std::vector<char> near(mesh.triangles.size());
  for (std::size_t f = 0; f < near.size(); ++f) near[f] = reaches_one(mesh, mesh.triangles[f], balls);
  for (;;) {
    Halves halves;
    for (std::size_t f = 0; f < near.size(); ++f) {
      if (!near[f]) continue;
      const Triangle& t = mesh.triangles[f];
      double length_mm = 0;
      const std::size_t k = longest_edge(mesh, t, length_mm);
      if (length_mm <= edge_mm) continue;
      const int a = t[k], b = t[(k + 1) % 3];
      if (!halves.try_emplace(key_of_edge(a, b), static_cast<int>(mesh.vertices.size())).second) continue;
      mesh.vertices.emplace_back(0.5 * (mesh.vertices[at(a)] + mesh.vertices[at(b)]));
    }
    if (halves.empty()) return near;
    const std::size_t count = mesh.triangles.size();
    for (std::size_t f = 0; f < count; ++f) {
      const std::vector<Triangle> parts = parts_of(mesh.triangles[f], halves);
      mesh.triangles[f] = parts[0];
      // What does not reach into a ball has no part that does.
      const bool was_near = near[f];
      if (was_near) near[f] = reaches_one(mesh, parts[0], balls);
      for (std::size_t i = 1; i < parts.size(); ++i) {
        mesh.triangles.push_back(parts[i]);
        near.push_back(was_near && reaches_one(mesh, parts[i], balls));
      }
    }
  }
}

}  // namespace scalpmark::models
