#include "models/exports/solids.h"

#include <Eigen/Geometry>
#include <algorithm>
#include <cmath>
#include <map>
#include <numbers>
#include <utility>

namespace scalpmark::models {

using Eigen::Vector2d;
using Eigen::Vector3d;

namespace {

/// Corners of a flat shape, each once, and its triangles by their numbers.
struct FlatShape {
  std::vector<Vector2d> corners;
  std::vector<geometry::Triangle> triangles;
};

FlatShape shape_of(const std::vector<Vector2d>& triangles) {
  constexpr double same_mm = 1e-6;
  FlatShape shape;
  const auto number = [&](const Vector2d& p) {
    const auto known = std::find_if(shape.corners.begin(), shape.corners.end(), [&](const Vector2d& q) {
      return (p - q).cwiseAbs().maxCoeff() < same_mm;
    });
    if (known == shape.corners.end()) {
      shape.corners.push_back(p);
      return static_cast<int>(shape.corners.size()) - 1;
    }
    return static_cast<int>(known - shape.corners.begin());
  };
  for (std::size_t i = 0; i + 2 < triangles.size(); i += 3)
    shape.triangles.push_back({number(triangles[i]), number(triangles[i + 1]), number(triangles[i + 2])});
  return shape;
}

/// Edges of one triangle alone, in its direction.
std::vector<std::pair<int, int>> rim_of(const FlatShape& shape) {
  std::map<std::pair<int, int>, int> uses;
  for (const auto& t : shape.triangles)
    for (std::size_t k = 0; k < 3; ++k) ++uses[{t[k], t[(k + 1) % 3]}];
  std::vector<std::pair<int, int>> rim;
  for (const auto& [edge, count] : uses)
    if (!uses.contains({edge.second, edge.first})) rim.push_back(edge);
  return rim;
}

}  // namespace

Mesh mark_slab(const MarkOnSkin& mark, double under_mm, double over_mm) {
  const FlatShape shape = shape_of(mark.triangles);
  const int n = static_cast<int>(shape.corners.size());
  const Vector3d across = mark.normal.cross(mark.along);
  Mesh mesh;
  for (const double z : {-under_mm, over_mm})
    for (const Vector2d& p : shape.corners)
      mesh.vertices.emplace_back(mark.at + p.x() * mark.along + p.y() * across + z * mark.normal);
  for (const auto& t : shape.triangles) {
    mesh.triangles.push_back({n + t[0], n + t[1], n + t[2]});
    mesh.triangles.push_back({t[0], t[2], t[1]});
  }
  for (const auto& [a, b] : rim_of(shape)) {
    mesh.triangles.push_back({a, b, n + b});
    mesh.triangles.push_back({a, n + b, n + a});
  }
  return mesh;
}

Mesh tube(const std::vector<Vector3d>& line, double radius_mm) {
  constexpr int sides = 6;
  constexpr double nothing_mm = 1e-6;
  std::vector<Vector3d> points;
  for (const Vector3d& p : line)
    if (points.empty() || (p - points.back()).norm() > nothing_mm) points.push_back(p);
  Mesh mesh;
  if (points.size() < 2) return mesh;
  // The frame goes along without turning about the line.
  Vector3d side = (points[1] - points[0]).unitOrthogonal();
  for (std::size_t i = 0; i < points.size(); ++i) {
    const Vector3d along =
        (points[std::min(i + 1, points.size() - 1)] - points[i > 0 ? i - 1 : 0]).normalized();
    const Vector3d square = side - side.dot(along) * along;
    side = square.norm() > 1e-3 ? Vector3d(square.normalized()) : along.unitOrthogonal();
    for (int k = 0; k < sides; ++k) {
      const double a = 2 * std::numbers::pi * k / sides;
      mesh.vertices.emplace_back(points[i] +
                                 radius_mm * (std::cos(a) * side + std::sin(a) * along.cross(side)));
    }
  }
  const int rings = static_cast<int>(points.size()), last = sides * (rings - 1);
  for (int i = 0; i + 1 < rings; ++i)
    for (int k = 0; k < sides; ++k) {
      const int a = sides * i + k, b = sides * i + (k + 1) % sides;
      mesh.triangles.push_back({a, b, b + sides});
      mesh.triangles.push_back({a, b + sides, a + sides});
    }
  for (int k = 1; k + 1 < sides; ++k) {
    mesh.triangles.push_back({0, k + 1, k});
    mesh.triangles.push_back({last, last + k, last + k + 1});
  }
  return mesh;
}

Mesh laid_there(Mesh in_coil, const Vector3d& origin, const Vector3d& right, const Vector3d& front,
                const Vector3d& normal) {
  for (Vector3d& v : in_coil.vertices) v = (origin + v.x() * right + v.y() * front + v.z() * normal).eval();
  return in_coil;
}

}  // namespace scalpmark::models
