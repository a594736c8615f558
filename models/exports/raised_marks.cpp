#include "models/exports/raised_marks.h"

#include <Eigen/Geometry>
#include <algorithm>
#include <map>
#include <set>
#include <unordered_map>
#include <utility>

#include "geometry/base/index.h"
#include "models/exports/finer_near.h"
#include "models/meshes/disjoint_sets.h"
#include "models/meshes/print_marks.h"

namespace scalpmark::models {

using Eigen::Vector2d;
using Eigen::Vector3d;
using geometry::at;
using geometry::Triangle;

namespace {

/// Triangles under a mark are made no longer than that.
constexpr double fine_mm = 0.5;
/// Marks with less room between them are lifted as one: a wall each would leave a slot that no printer makes.
constexpr double apart_mm = 3 * fine_mm;
/// What lies further from a mark's plane is another side of the head.
constexpr double near_plane_mm = 6;
/// A corner no further from an outline than this share of an edge lies on it: no slivers.
constexpr double on_outline = 0.1;

double reach_of(const MarkOnSkin& mark) {
  double reach = 0;
  for (const Vector2d& p : mark.triangles) reach = std::max(reach, p.norm());
  return reach;
}

bool in_triangle(const Vector2d& p, const Vector2d& a, const Vector2d& b, const Vector2d& c) {
  const auto side = [&](const Vector2d& from, const Vector2d& to) {
    return (to - from).x() * (p - from).y() - (to - from).y() * (p - from).x();
  };
  const double ab = side(a, b), bc = side(b, c), ca = side(c, a);
  return (ab >= 0 && bc >= 0 && ca >= 0) || (ab <= 0 && bc <= 0 && ca <= 0);
}

/// Marks that are lifted together, one way.
struct Raised {
  std::vector<MarkOnSkin> marks;
  std::vector<double> reach_mm;  ///< of each
  Vector3d up = Vector3d::Zero();

  [[nodiscard]] bool is_near(const Vector3d& p, double within_mm) const {
    for (std::size_t i = 0; i < marks.size(); ++i)
      if ((p - marks[i].at).norm() < reach_mm[i] + within_mm) return true;
    return false;
  }
  [[nodiscard]] bool holds(const Vector3d& p) const {
    if (!is_near(p, near_plane_mm)) return false;
    return std::any_of(marks.begin(), marks.end(), [&](const MarkOnSkin& m) {
      const Vector3d away = p - m.at;
      if (std::abs(away.dot(m.normal)) > near_plane_mm) return false;
      const Vector2d flat(away.dot(m.along), away.dot(m.normal.cross(m.along)));
      for (std::size_t i = 0; i + 2 < m.triangles.size(); i += 3)
        if (in_triangle(flat, m.triangles[i], m.triangles[i + 1], m.triangles[i + 2])) return true;
      return false;
    });
  }
};

std::vector<Raised> together(const std::vector<MarkOnSkin>& marks) {
  DisjointSets sets(marks.size());
  for (std::size_t i = 0; i < marks.size(); ++i)
    for (std::size_t j = i + 1; j < marks.size(); ++j)
      if ((marks[i].at - marks[j].at).norm() < reach_of(marks[i]) + reach_of(marks[j]) + apart_mm)
        sets.join(static_cast<int>(i), static_cast<int>(j));
  std::map<int, Raised> by_set;
  for (std::size_t i = 0; i < marks.size(); ++i) {
    Raised& r = by_set[sets.of(static_cast<int>(i))];
    r.marks.push_back(marks[i]);
    r.reach_mm.push_back(reach_of(marks[i]));
    r.up += marks[i].normal;
  }
  std::vector<Raised> all;
  for (auto& [set, r] : by_set) {
    r.up.normalize();
    all.push_back(std::move(r));
  }
  return all;
}

/// Cuts the outlines of one group of marks into the triangles near it, and says which lie within.
class Outline {
public:
  Outline(Mesh& mesh, const Raised& raised) : mesh_(mesh), raised_(raised) {}

  /// `faces`: all that the outline can touch. What is within comes out.
  std::vector<int> cut(const std::vector<int>& faces, std::vector<int>& made) {
    for (const int f : faces)
      for (const int v : mesh_.triangles[at(f)]) within(v);
    for (const int f : faces)
      for (std::size_t k = 0; k < 3; ++k) settle_ends(corner(f, k), corner(f, k + 1));
    std::vector<int> inside;
    for (const int f : faces) cut_one(f, inside, made);
    return inside;
  }

private:
  enum class Lies { within, without, on };
  using Edge = std::pair<int, int>;

  [[nodiscard]] int corner(int face, std::size_t k) const { return mesh_.triangles[at(face)][k % 3]; }

  Lies within(int v) {
    const auto [known, is_new] = lies_.try_emplace(v, Lies::without);
    if (is_new && raised_.holds(mesh_.vertices[at(v)])) known->second = Lies::within;
    return known->second;
  }

  /// How far along from a to b, one within and one without, the outline runs.
  [[nodiscard]] double crossing(int a, int b) const {
    const Vector3d from = mesh_.vertices[at(a)], to = mesh_.vertices[at(b)];
    const bool starts_within = raised_.holds(from);
    double low = 0, high = 1;
    for (int i = 0; i < 30; ++i) {
      const double middle = 0.5 * (low + high);
      (raised_.holds(from + middle * (to - from)) == starts_within ? low : high) = middle;
    }
    return 0.5 * (low + high);
  }

  void settle_ends(int a, int b) {
    if (a > b) std::swap(a, b);
    if (!seen_.insert({a, b}).second) return;
    if (raised_.holds(mesh_.vertices[at(a)]) == raised_.holds(mesh_.vertices[at(b)])) return;
    const double t = crossing(a, b);
    if (t < on_outline)
      lies_[a] = Lies::on;
    else if (t > 1 - on_outline)
      lies_[b] = Lies::on;
  }

  /// The corner where the outline crosses an edge.
  int crossing_corner(int a, int b) {
    if (a > b) std::swap(a, b);
    const auto [known, is_new] = crossings_.try_emplace({a, b}, static_cast<int>(mesh_.vertices.size()));
    if (is_new) {
      const double t = crossing(a, b);
      mesh_.vertices.emplace_back(mesh_.vertices[at(a)] +
                                  t * (mesh_.vertices[at(b)] - mesh_.vertices[at(a)]));
      lies_[known->second] = Lies::on;
    }
    return known->second;
  }

  [[nodiscard]] bool is_within(const Triangle& t) {
    for (const int v : t)
      if (lies_.at(v) != Lies::on) return lies_.at(v) == Lies::within;
    return raised_.holds((mesh_.vertices[at(t[0])] + mesh_.vertices[at(t[1])] + mesh_.vertices[at(t[2])]) /
                         3);
  }

  void cut_one(int face, std::vector<int>& inside, std::vector<int>& made) {
    std::vector<Triangle> parts{mesh_.triangles[at(face)]};
    // One edge that the outline crosses after the other; each cuts the part that has it.
    for (std::size_t i = 0; i < parts.size();) {
      const Triangle t = parts[i];
      std::size_t k = 0;
      while (k < 3 && !crosses(t[k], t[(k + 1) % 3])) ++k;
      if (k == 3) {
        ++i;
        continue;
      }
      const int a = t[k], b = t[(k + 1) % 3], c = t[(k + 2) % 3], m = crossing_corner(a, b);
      parts[i] = {a, m, c};
      parts.push_back({m, b, c});
    }
    for (std::size_t i = 0; i < parts.size(); ++i) {
      int number = face;
      if (i == 0) {
        mesh_.triangles[at(face)] = parts[0];
      } else {
        number = static_cast<int>(mesh_.triangles.size());
        mesh_.triangles.push_back(parts[i]);
        made.push_back(number);
      }
      if (is_within(parts[i])) inside.push_back(number);
    }
  }

  [[nodiscard]] bool crosses(int a, int b) const {
    const Lies x = lies_.at(a), y = lies_.at(b);
    return x != y && x != Lies::on && y != Lies::on;
  }

  Mesh& mesh_;
  const Raised& raised_;
  std::unordered_map<int, Lies> lies_;
  std::set<Edge> seen_;
  std::map<Edge, int> crossings_;
};

/// Lifts the triangles within, with walls around them.
void lift(PrintMesh& print, const std::vector<int>& inside, const Vector3d& up, std::uint16_t number) {
  Mesh& mesh = print.mesh;
  std::map<std::pair<int, int>, int> edges;  // of the inside, in its direction
  for (const int f : inside)
    for (std::size_t k = 0; k < 3; ++k)
      edges[{mesh.triangles[at(f)][k], mesh.triangles[at(f)][(k + 1) % 3]}] = f;
  std::unordered_map<int, int> top;
  for (const int f : inside) {
    print.is[at(f)] = number;
    for (int& v : mesh.triangles[at(f)]) {
      const auto [known, is_new] = top.try_emplace(v, static_cast<int>(mesh.vertices.size()));
      if (is_new) mesh.vertices.emplace_back(mesh.vertices[at(v)] + print_mark_mm * up);
      v = known->second;
    }
  }
  const auto wall = static_cast<std::uint16_t>(print_mark::wall | number);
  for (const auto& [edge, f] : edges) {
    const auto [a, b] = edge;
    if (edges.contains({b, a})) continue;
    mesh.triangles.push_back({b, top[b], a});
    print.is.push_back(static_cast<std::uint16_t>(wall | print_mark::first_wall));
    mesh.triangles.push_back({a, top[b], top[a]});
    print.is.push_back(wall);
  }
}

}  // namespace

PrintMesh with_raised_marks(Mesh closed_skin, const std::vector<MarkOnSkin>& marks) {
  PrintMesh print;
  const std::vector<Raised> all = together(marks);
  std::vector<FineBall> balls;
  for (const MarkOnSkin& m : marks) balls.push_back({m.at, reach_of(m) + apart_mm});
  const std::vector<char> near = make_finer_near(closed_skin, balls, fine_mm);
  print.mesh = std::move(closed_skin);
  std::vector<int> faces;
  for (std::size_t f = 0; f < near.size(); ++f)
    if (near[f]) faces.push_back(static_cast<int>(f));
  std::vector<std::vector<int>> inside;
  for (const Raised& raised : all) {
    std::vector<int> about;
    for (const int f : faces)
      if (raised.is_near(print.mesh.vertices[at(print.mesh.triangles[at(f)][0])], apart_mm))
        about.push_back(f);
    std::vector<int> made;
    inside.push_back(Outline(print.mesh, raised).cut(about, made));
    faces.insert(faces.end(), made.begin(), made.end());
  }
  print.is.assign(print.mesh.triangles.size(), print_mark::skin);
  for (std::size_t i = 0; i < all.size(); ++i)
    lift(print, inside[i], all[i].up, static_cast<std::uint16_t>(i + 1));
  drop_unused_vertices(print.mesh);
  return print;
}

}  // namespace scalpmark::models
