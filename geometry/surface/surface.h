#pragma once

#include <Eigen/Core>
#include <array>
#include <functional>
#include <memory>
#include <optional>
#include <vector>

namespace scalpmark::geometry {

/// Corner indices of one triangle, counter-clockwise seen from outside the head.
using Triangle = std::array<int, 3>;

/// A point on a surface: a face and its barycentric weights there (non-negative, sum 1).
struct SurfacePoint {
  int face = -1;
  Eigen::Vector3d weights = Eigen::Vector3d::Constant(1.0 / 3.0);
};

/// The other side of an edge. Edge k of a face runs from its corner k to its corner (k + 1) % 3.
struct Neighbour {
  int face = -1;  ///< -1 at a border
  int edge = -1;  ///< the same edge, as numbered in `face`
};

struct RayHit {
  SurfacePoint point;
  double distance_mm = 0;  ///< from the ray's origin, never negative
};

/// The skin: triangles with topology, mm, outward orientation. Built once, then const; every query is
/// thread-safe, and a copy is cheap (shares everything). The search tree is built on the first query that
/// needs it.
class Surface {
public:
  /// Refuses (GeometryError): no triangles, an index out of range, a corner used twice in a triangle, a
  /// coordinate that is not finite, an edge with more than two triangles, neighbours of opposite orientation.
  /// Borders are allowed.
  Surface(std::vector<Eigen::Vector3d> vertices, std::vector<Triangle> triangles);

  /// The same triangles on moved vertices (shares the topology). Refuses a different vertex count.
  [[nodiscard]] Surface moved(std::vector<Eigen::Vector3d> vertices) const;

  [[nodiscard]] const std::vector<Eigen::Vector3d>& vertices() const { return *vertices_; }
  [[nodiscard]] const std::vector<Triangle>& triangles() const;
  [[nodiscard]] const Eigen::Vector3d& vertex(int v) const { return (*vertices_)[static_cast<size_t>(v)]; }
  [[nodiscard]] const Triangle& triangle(int f) const { return triangles()[static_cast<size_t>(f)]; }
  [[nodiscard]] const Eigen::Vector3d& corner(int f, int k) const {
    return vertex(triangle(f)[static_cast<size_t>(k)]);
  }

  [[nodiscard]] Neighbour neighbour(int face, int edge) const;
  /// Some face at this vertex: for a border vertex the one from which turning counter-clockwise visits all.
  /// -1 for a vertex without triangles.
  [[nodiscard]] int face_at(int vertex) const;
  /// All faces at a vertex, counter-clockwise.
  [[nodiscard]] std::vector<int> faces_around(int vertex) const;
  [[nodiscard]] bool is_border_vertex(int vertex) const;
  /// Border loops as vertex lists; empty for a closed surface.
  [[nodiscard]] const std::vector<std::vector<int>>& borders() const;
  [[nodiscard]] bool is_closed() const { return borders().empty(); }

  [[nodiscard]] Eigen::Vector3d position(const SurfacePoint& p) const;
  [[nodiscard]] Eigen::Vector3d face_normal(int face) const;  ///< unit; zero for a sliver without area
  [[nodiscard]] double face_area(int face) const;             ///< mm2
  /// Angle-weighted vertex normals, unit, outward (worked out on first use).
  [[nodiscard]] const std::vector<Eigen::Vector3d>& vertex_normals() const;
  /// The vertex normals blended over the face, unit.
  [[nodiscard]] Eigen::Vector3d smooth_normal(const SurfacePoint& p) const;

  /// The nearest skin point to `query`.
  /// Refuses (GeometryError) a place that is no place: one with a coordinate that is not finite.
  [[nodiscard]] SurfacePoint closest(const Eigen::Vector3d& query) const;
  /// The first skin point on the ray (unit `direction`), front or back of a face alike, within `reach_mm`.
  [[nodiscard]] std::optional<RayHit> ray_hit(const Eigen::Vector3d& origin, const Eigen::Vector3d& direction,
                                              double reach_mm = 1e6) const;
  /// Walks the search tree: goes into a box (its min and max corner) when `enter` says so, and hands over the
  /// faces of the leaves reached. For bounded searches that closest() and ray_hit() do not cover.
  void visit(const std::function<bool(const Eigen::Vector3d&, const Eigen::Vector3d&)>& enter,
             const std::function<void(int)>& face) const;

  /// Builds the search tree and normals now, instead of on the first query.
  void prepare() const;

private:
  struct Topology;
  struct Lazy;
  Surface(std::vector<Eigen::Vector3d> vertices, std::shared_ptr<const Topology> topology);

  std::shared_ptr<const std::vector<Eigen::Vector3d>> vertices_;
  std::shared_ptr<const Topology> topology_;
  std::shared_ptr<Lazy> lazy_;
};

}  // namespace scalpmark::geometry
