#include "geometry/surface/surface.h"

#include <Eigen/Geometry>
#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>
#include <mutex>
#include <unsupported/Eigen/BVH>

#include "geometry/base/error.h"
#include "geometry/base/index.h"
#include "geometry/surface/box_tree.h"
#include "geometry/surface/triangle_math.h"

namespace scalpmark::geometry {

using Eigen::Vector3d;
using Box = Eigen::AlignedBox3d;

struct Surface::Topology {
  std::vector<Triangle> triangles;
  std::vector<std::array<Neighbour, 3>> neighbours;
  std::vector<int> face_at;
  std::vector<char> on_border;
  std::vector<std::vector<int>> borders;
};

struct Surface::Lazy {
  std::once_flag tree_once, normals_once;
  std::optional<BoxTree> tree;
  std::vector<Vector3d> normals;
};

namespace {

/// One directed edge, filed under its lower vertex so that its opposite is found in the same short list.
/// Small, since they are written and read all over.
struct HalfEdge {
  int other;             // the higher vertex
  std::uint32_t number;  // 3 * face + edge
  [[nodiscard]] size_t face() const { return number / 3; }
  [[nodiscard]] size_t edge() const { return number % 3; }
};

std::vector<std::array<Neighbour, 3>> link_faces(const std::vector<Triangle>& triangles, int vertex_count) {
  std::vector<int> first(at(vertex_count) + 1, 0);
  for (const auto& t : triangles)
    for (size_t k = 0; k < 3; ++k) ++first[at(std::min(t[k], t[(k + 1) % 3])) + 1];
  for (size_t i = 1; i < first.size(); ++i) first[i] += first[i - 1];
  std::vector<HalfEdge> edges(3 * triangles.size());
  std::vector<int> next = first;
  for (size_t f = 0; f < triangles.size(); ++f)
    for (size_t k = 0; k < 3; ++k) {
      const int a = triangles[f][k], b = triangles[f][(k + 1) % 3];
      edges[at(next[at(std::min(a, b))]++)] = {std::max(a, b), static_cast<std::uint32_t>(3 * f + k)};
    }
  // Whether it runs from the lower to the higher vertex.
  const auto rises = [&](const HalfEdge& e) { return triangles[e.face()][(e.edge() + 1) % 3] == e.other; };
  std::vector<std::array<Neighbour, 3>> neighbours(triangles.size());
  for (int v = 0; v < vertex_count; ++v)
    for (int i = first[at(v)]; i < first[at(v) + 1]; ++i) {
      const HalfEdge& e = edges[at(i)];
      for (int j = i + 1; j < first[at(v) + 1]; ++j) {
        const HalfEdge& o = edges[at(j)];
        if (o.other != e.other) continue;
        auto& here = neighbours[e.face()][e.edge()];
        if (here.face >= 0)
          throw GeometryError(Message::of(
              "The surface has an edge shared by more than two triangles; repair the mesh first."));
        if (rises(o) == rises(e))
          throw GeometryError(Message::of(
              "The surface has neighbouring triangles that face opposite ways; repair the mesh first."));
        here = {static_cast<int>(o.face()), static_cast<int>(o.edge())};
        neighbours[o.face()][o.edge()] = {static_cast<int>(e.face()), static_cast<int>(e.edge())};
      }
    }
  return neighbours;
}

}  // namespace

Surface::Surface(std::vector<Vector3d> vertices, std::vector<Triangle> triangles)
    : vertices_(std::make_shared<const std::vector<Vector3d>>(std::move(vertices))) {
  if (triangles.empty()) throw GeometryError(Message::of("The surface has no triangles."));
  const int count = static_cast<int>(vertices_->size());
  for (const auto& v : *vertices_)
    if (!v.allFinite())
      throw GeometryError(Message::of("The surface has a coordinate that is not a number."));
  for (const auto& t : triangles) {
    for (const int i : t)
      if (i < 0 || i >= count)
        throw GeometryError(Message::of("The surface has a triangle with a corner that does not exist."));
    if (t[0] == t[1] || t[1] == t[2] || t[2] == t[0])
      throw GeometryError(Message::of("The surface has a triangle that uses one corner twice."));
  }
  auto topology = std::make_shared<Topology>();
  topology->neighbours = link_faces(triangles, count);
  topology->triangles = std::move(triangles);
  topology->face_at.assign(at(count), -1);
  topology->on_border.assign(at(count), 0);
  std::vector<std::array<char, 3>> seen(topology->triangles.size(), {0, 0, 0});
  for (size_t f = 0; f < topology->triangles.size(); ++f)
    for (size_t k = 0; k < 3; ++k) {
      const int v = topology->triangles[f][k];
      // A border vertex is entered at the face whose edge leaving the vertex has no neighbour.
      const bool starts_fan = topology->neighbours[f][k].face < 0;
      if (starts_fan || topology->face_at[at(v)] < 0) topology->face_at[at(v)] = static_cast<int>(f);
      if (starts_fan) {
        topology->on_border[at(v)] = 1;
        topology->on_border[at(topology->triangles[f][(k + 1) % 3])] = 1;
      }
    }
  for (size_t f = 0; f < topology->triangles.size(); ++f)
    for (size_t k = 0; k < 3; ++k) {
      if (topology->neighbours[f][k].face >= 0 || seen[f][k]) continue;
      std::vector<int> loop;
      size_t face = f, edge = k;
      while (!seen[face][edge]) {
        seen[face][edge] = 1;
        loop.push_back(topology->triangles[face][edge]);
        edge = (edge + 1) % 3;
        while (topology->neighbours[face][edge].face >= 0) {
          const Neighbour n = topology->neighbours[face][edge];
          face = at(n.face);
          edge = (at(n.edge) + 1) % 3;
        }
      }
      topology->borders.push_back(std::move(loop));
    }
  topology_ = std::move(topology);
  lazy_ = std::make_shared<Lazy>();
}

Surface::Surface(std::vector<Vector3d> vertices, std::shared_ptr<const Topology> topology)
    : vertices_(std::make_shared<const std::vector<Vector3d>>(std::move(vertices))),
      topology_(std::move(topology)),
      lazy_(std::make_shared<Lazy>()) {}

Surface Surface::moved(std::vector<Vector3d> vertices) const {
  if (vertices.size() != vertices_->size())
    throw GeometryError(Message::of("A moved surface must keep its number of corners."));
  for (const auto& v : vertices)
    if (!v.allFinite())
      throw GeometryError(Message::of("The moved surface has a coordinate that is not a number."));
  return {std::move(vertices), topology_};
}

const std::vector<Triangle>& Surface::triangles() const {
  return topology_->triangles;
}
Neighbour Surface::neighbour(int face, int edge) const {
  return topology_->neighbours[at(face)][at(edge)];
}
int Surface::face_at(int vertex) const {
  return topology_->face_at[at(vertex)];
}
bool Surface::is_border_vertex(int vertex) const {
  return topology_->on_border[at(vertex)] != 0;
}
const std::vector<std::vector<int>>& Surface::borders() const {
  return topology_->borders;
}

std::vector<int> Surface::faces_around(int vertex) const {
  std::vector<int> faces;
  int face = face_at(vertex);
  const int first = face;
  while (face >= 0) {
    faces.push_back(face);
    const auto& t = triangle(face);
    const int k = t[0] == vertex ? 0 : t[1] == vertex ? 1 : 2;
    face = neighbour(face, (k + 2) % 3).face;
    if (face == first) break;
  }
  return faces;
}

Vector3d Surface::position(const SurfacePoint& p) const {
  return p.weights[0] * corner(p.face, 0) + p.weights[1] * corner(p.face, 1) +
         p.weights[2] * corner(p.face, 2);
}

Vector3d Surface::face_normal(int face) const {
  const Vector3d n = (corner(face, 1) - corner(face, 0)).cross(corner(face, 2) - corner(face, 0));
  const double length = n.norm();
  return length > 0 ? Vector3d(n / length) : Vector3d::Zero();
}

double Surface::face_area(int face) const {
  return 0.5 * (corner(face, 1) - corner(face, 0)).cross(corner(face, 2) - corner(face, 0)).norm();
}

const std::vector<Vector3d>& Surface::vertex_normals() const {
  std::call_once(lazy_->normals_once, [this] {
    std::vector<Vector3d> normals(vertices_->size(), Vector3d::Zero());
    for (size_t f = 0; f < triangles().size(); ++f) {
      const int face = static_cast<int>(f);
      const Vector3d n = face_normal(face);
      for (int k = 0; k < 3; ++k)
        normals[at(triangles()[f][at(k)])] +=
            corner_angle(corner(face, k), corner(face, (k + 1) % 3), corner(face, (k + 2) % 3)) * n;
    }
    for (auto& n : normals)
      if (n.norm() > 0) n.normalize();
    lazy_->normals = std::move(normals);
  });
  return lazy_->normals;
}

Vector3d Surface::smooth_normal(const SurfacePoint& p) const {
  const auto& normals = vertex_normals();
  const auto& t = triangle(p.face);
  const Vector3d n =
      p.weights[0] * normals[at(t[0])] + p.weights[1] * normals[at(t[1])] + p.weights[2] * normals[at(t[2])];
  return n.norm() > 0 ? Vector3d(n.normalized()) : face_normal(p.face);
}

// --- Search tree
// ------------------------------------------------------------------------------------------------

namespace {

/// Goes into the nearer of two boxes first, and into none farther than what has been found: Eigen's
/// BVMinimize keeps a queue of all boxes that wait, which takes longer than to look into a few more.
struct ClosestSearch {
  const Surface& skin;
  Vector3d query;
  double best = std::numeric_limits<double>::infinity();
  SurfacePoint point;

  void look_at(int face) {
    const Vector3d w =
        closest_weights(query, skin.corner(face, 0), skin.corner(face, 1), skin.corner(face, 2));
    const SurfacePoint candidate{face, w};
    const double squared = (skin.position(candidate) - query).squaredNorm();
    if (squared < best) {
      best = squared;
      point = candidate;
    }
  }

  void look_into(const BoxTree& tree) {
    struct Waiting {
      double squared;
      BoxTree::Index node;
    };
    // One more waits with each level, and levels halve: no mesh has room for more.
    std::array<Waiting, 64> waiting;
    waiting[0] = {0, tree.getRootIndex()};
    size_t count = 1;
    while (count > 0) {
      const Waiting next = waiting[--count];
      if (next.squared > best) continue;
      BoxTree::VolumeIterator volumes, volumes_end;
      BoxTree::ObjectIterator objects, objects_end;
      tree.getChildren(next.node, volumes, volumes_end, objects, objects_end);
      for (; objects != objects_end; ++objects) look_at(*objects);
      const size_t first = count;
      for (; volumes != volumes_end; ++volumes)
        if (const double squared = tree.getVolume(*volumes).squaredExteriorDistance(query); squared <= best)
          waiting[count++] = {squared, *volumes};
      if (count - first == 2 && waiting[first].squared < waiting[first + 1].squared)
        std::swap(waiting[first], waiting[first + 1]);
    }
  }
};

struct RaySearch {
  const Surface& skin;
  Vector3d origin, direction, inverse;
  double reach;
  std::optional<RayHit> hit;

  [[nodiscard]] bool intersectVolume(const Box& box) const {
    double from = 0, to = reach;
    for (int k = 0; k < 3; ++k) {
      if (direction[k] == 0) {
        if (origin[k] < box.min()[k] || origin[k] > box.max()[k]) return false;
        continue;
      }
      double a = (box.min()[k] - origin[k]) * inverse[k], b = (box.max()[k] - origin[k]) * inverse[k];
      if (a > b) std::swap(a, b);
      from = std::max(from, a);
      to = std::min(to, b);
    }
    // Boxes of flat faces have no thickness; the slack keeps rounding from losing them (mm).
    return from <= to + 1e-9;
  }
  bool intersectObject(int face) {
    const Vector3d a = skin.corner(face, 0), e1 = skin.corner(face, 1) - a, e2 = skin.corner(face, 2) - a;
    const Vector3d h = direction.cross(e2);
    const double det = e1.dot(h);
    if (det == 0) return false;
    const Vector3d s = origin - a;
    // Weights may be outside by rounding; without this slack a ray through a shared edge could slip between.
    constexpr double slack = 1e-10;
    const double u = s.dot(h) / det;
    if (u < -slack || u > 1 + slack) return false;
    const Vector3d q = s.cross(e1);
    const double v = direction.dot(q) / det;
    if (v < -slack || u + v > 1 + slack) return false;
    const double t = e2.dot(q) / det;
    if (t < 0 || t > reach) return false;
    reach = t;
    hit = RayHit{{face, clamp_weights({1 - u - v, u, v})}, t};
    return false;
  }
};

}  // namespace

static const BoxTree& tree_of(const Surface& skin, std::once_flag& once, std::optional<BoxTree>& tree) {
  std::call_once(once, [&] { tree.emplace(skin.vertices(), skin.triangles()); });
  return *tree;
}

SurfacePoint Surface::closest(const Vector3d& query) const {
  if (!query.allFinite())
    throw GeometryError(Message::of(
        "A place to be found on the skin has a coordinate that is not a number; give all three."));
  ClosestSearch search{*this, query, std::numeric_limits<double>::infinity(), {}};
  search.look_into(tree_of(*this, lazy_->tree_once, lazy_->tree));
  return search.point;
}

std::optional<RayHit> Surface::ray_hit(const Vector3d& origin, const Vector3d& direction,
                                       double reach_mm) const {
  RaySearch search{*this, origin, direction, direction.cwiseInverse(), reach_mm, {}};
  Eigen::BVIntersect(tree_of(*this, lazy_->tree_once, lazy_->tree), search);
  return search.hit;
}

void Surface::visit(const std::function<bool(const Vector3d&, const Vector3d&)>& enter,
                    const std::function<void(int)>& face) const {
  const BoxTree& boxes = tree_of(*this, lazy_->tree_once, lazy_->tree);
  std::vector<BoxTree::Index> waiting{boxes.getRootIndex()};
  while (!waiting.empty()) {
    const auto index = waiting.back();
    waiting.pop_back();
    BoxTree::VolumeIterator volumes, volumes_end;
    BoxTree::ObjectIterator objects, objects_end;
    boxes.getChildren(index, volumes, volumes_end, objects, objects_end);
    for (; volumes != volumes_end; ++volumes) {
      const Box& box = boxes.getVolume(*volumes);
      if (enter(box.min(), box.max())) waiting.push_back(*volumes);
    }
    for (; objects != objects_end; ++objects) face(*objects);
  }
}

void Surface::prepare() const {
  tree_of(*this, lazy_->tree_once, lazy_->tree).complete();
  (void)vertex_normals();
}

}  // namespace scalpmark::geometry
