#include "models/generic/skin_mesh.h"

#include <Eigen/Geometry>
#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>
#include <unordered_map>

#include "geometry/base/angles.h"
#include "geometry/base/index.h"
#include "models/generic/edge_key.h"
#include "models/generic/first_mesh.h"
#include "models/generic/skin_shape.h"

namespace scalpmark::models::generic {

using Eigen::Vector3d;
using geometry::Triangle;

namespace {

constexpr int rounds = 8;

struct Remesher {
  std::vector<Vector3d>& at;
  std::vector<Triangle>& triangles;
  std::vector<char> pinned;
  std::vector<double> wanted;  ///< edge length at each vertex, mm

  [[nodiscard]] bool on_midline(int v) const { return at[geometry::at(v)].x() == 0; }
  [[nodiscard]] double length(int a, int b) const {
    return (at[geometry::at(a)] - at[geometry::at(b)]).norm();
  }
  [[nodiscard]] double wanted_on(int a, int b) const {
    return 0.5 * (wanted[geometry::at(a)] + wanted[geometry::at(b)]);
  }
  [[nodiscard]] Vector3d normal(const Triangle& t) const {
    return (at[geometry::at(t[1])] - at[geometry::at(t[0])])
        .cross(at[geometry::at(t[2])] - at[geometry::at(t[0])]);
  }

  /// An edge and the triangles beside it; right is -1 on the midline.
  struct Edge {
    int a, b, left, right;
  };
  [[nodiscard]] std::vector<Edge> edges() const {
    std::vector<Edge> list;
    list.reserve(triangles.size() * 3 / 2 + 1000);
    std::unordered_map<std::uint64_t, int> seen;
    seen.reserve(triangles.size() * 2);
    for (int f = 0; f < static_cast<int>(triangles.size()); ++f)
      for (int k = 0; k < 3; ++k) {
        const int a = triangles[geometry::at(f)][geometry::at(k)],
                  b = triangles[geometry::at(f)][geometry::at((k + 1) % 3)];
        const auto [found, fresh] = seen.try_emplace(edge_key(a, b), static_cast<int>(list.size()));
        if (fresh)
          list.push_back({a, b, f, -1});
        else
          list[geometry::at(found->second)].right = f;
      }
    return list;
  }
  static int opposite(const Triangle& t, int a, int b) {
    for (const int v : t)
      if (v != a && v != b) return v;
    return -1;
  }

  void measure_wanted() {
    wanted.resize(at.size());
    for (size_t v = 0; v < at.size(); ++v) wanted[v] = edge_length_mm(at[v]);
  }

  bool split() {
    auto list = edges();
    std::vector<std::pair<double, int>> longest;
    for (int e = 0; e < static_cast<int>(list.size()); ++e) {
      const auto& edge = list[geometry::at(e)];
      const double ratio = length(edge.a, edge.b) / wanted_on(edge.a, edge.b);
      if (ratio > 4.0 / 3) longest.emplace_back(-ratio, e);
    }
    std::sort(longest.begin(), longest.end());
    std::vector<char> touched(triangles.size(), 0);
    for (const auto& [ratio, e] : longest) {
      const auto& edge = list[geometry::at(e)];
      if (touched[geometry::at(edge.left)] || (edge.right >= 0 && touched[geometry::at(edge.right)]))
        continue;
      const int middle = static_cast<int>(at.size());
      at.push_back(onto_skin(0.5 * (at[geometry::at(edge.a)] + at[geometry::at(edge.b)])));
      if (edge.right < 0) at.back().x() = 0;
      wanted.push_back(edge_length_mm(at.back()));
      pinned.push_back(0);
      for (const int f : {edge.left, edge.right}) {
        if (f < 0) continue;
        Triangle other = triangles[geometry::at(f)];
        for (auto& v : triangles[geometry::at(f)])
          if (v == edge.b) v = middle;
        for (auto& v : other)
          if (v == edge.a) v = middle;
        triangles.push_back(other);
        touched[geometry::at(f)] = 1;
      }
    }
    return !longest.empty();
  }

  /// Whether moving `drop` onto `keep`, and both to `target`, leaves a skin that is neither pinched in the
  /// mirror nor too coarse nor folded. The rings are the vertices around each, `around` the triangles.
  [[nodiscard]] bool may_collapse(int keep, int drop, const Vector3d& target,
                                  const std::vector<int>& ring_keep, const std::vector<int>& ring_drop,
                                  const std::vector<std::vector<int>>& around) const {
    // A new edge between two midline vertices would be shared by four triangles once mirrored.
    for (const int w : ring_drop)
      if (on_midline(keep) && !on_midline(drop) && w != keep && on_midline(w) &&
          !std::binary_search(ring_keep.begin(), ring_keep.end(), w))
        return false;
    for (const int w : ring_drop)
      if (w != keep && (target - at[geometry::at(w)]).norm() > 4.0 / 3 * wanted_on(keep, w)) return false;
    for (const int v : {keep, drop})
      for (const int f : around[geometry::at(v)]) {
        const Triangle& t = triangles[geometry::at(f)];
        const auto has = [&](int w) { return t[0] == w || t[1] == w || t[2] == w; };
        if (has(keep) && has(drop)) continue;
        std::array<Vector3d, 3> c{at[geometry::at(t[0])], at[geometry::at(t[1])], at[geometry::at(t[2])]};
        for (size_t k = 0; k < 3; ++k)
          if (t[k] == v) c[k] = target;
        const Vector3d before = normal(t), after = (c[1] - c[0]).cross(c[2] - c[0]);
        if (before.dot(after) <= 0.5 * before.norm() * after.norm()) return false;
      }
    return true;
  }

  void collapse() {
    std::vector<std::vector<int>> around(at.size());
    for (int f = 0; f < static_cast<int>(triangles.size()); ++f)
      for (const int v : triangles[geometry::at(f)]) around[geometry::at(v)].push_back(f);
    std::vector<std::pair<double, int>> shortest;
    const auto list = edges();
    for (int e = 0; e < static_cast<int>(list.size()); ++e) {
      const auto& edge = list[geometry::at(e)];
      const double ratio = length(edge.a, edge.b) / wanted_on(edge.a, edge.b);
      if (ratio < 0.8) shortest.emplace_back(ratio, e);
    }
    std::sort(shortest.begin(), shortest.end());
    std::vector<char> moved(at.size(), 0), gone(triangles.size(), 0);
    const auto ring = [&](int v) {
      std::vector<int> all;
      for (const int f : around[geometry::at(v)])
        for (const int w : triangles[geometry::at(f)])
          if (w != v) all.push_back(w);
      std::sort(all.begin(), all.end());
      all.erase(std::unique(all.begin(), all.end()), all.end());
      return all;
    };
    for (const auto& [ratio, e] : shortest) {
      int keep = list[geometry::at(e)].a, drop = list[geometry::at(e)].b;
      const bool border = list[geometry::at(e)].right < 0;
      if (moved[geometry::at(keep)] || moved[geometry::at(drop)]) continue;
      if (pinned[geometry::at(drop)] || (on_midline(drop) && !on_midline(keep))) std::swap(keep, drop);
      if (pinned[geometry::at(drop)] || (on_midline(drop) && !border)) continue;
      const auto ring_keep = ring(keep), ring_drop = ring(drop);
      std::vector<int> common;
      std::set_intersection(ring_keep.begin(), ring_keep.end(), ring_drop.begin(), ring_drop.end(),
                            std::back_inserter(common));
      if (common.size() != (border ? 1U : 2U)) continue;  // else the skin would pinch
      Vector3d target = at[geometry::at(keep)];
      if (!pinned[geometry::at(keep)] && on_midline(keep) == on_midline(drop)) {
        target = onto_skin(0.5 * (at[geometry::at(keep)] + at[geometry::at(drop)]));
        if (border) target.x() = 0;
      }
      if (!may_collapse(keep, drop, target, ring_keep, ring_drop, around)) continue;
      at[geometry::at(keep)] = target;
      for (const int f : around[geometry::at(drop)]) {
        Triangle& t = triangles[geometry::at(f)];
        if (t[0] == keep || t[1] == keep || t[2] == keep) {
          gone[geometry::at(f)] = 1;
          for (const int w : t)
            if (w != drop) std::erase(around[geometry::at(w)], f);
        } else {
          for (auto& w : t)
            if (w == drop) w = keep;
          around[geometry::at(keep)].push_back(f);
        }
      }
      around[geometry::at(drop)].clear();
      moved[geometry::at(drop)] = 1;
      moved[geometry::at(keep)] = 1;
      for (const int w : ring_drop) moved[geometry::at(w)] = 1;
    }
    size_t kept = 0;
    for (size_t f = 0; f < triangles.size(); ++f)
      if (!gone[f]) triangles[kept++] = triangles[f];
    triangles.resize(kept);
    drop_unused();
  }

  void drop_unused() {
    std::vector<int> name(at.size(), -1);
    std::vector<char> used(at.size(), 0);
    for (const auto& t : triangles)
      for (const int v : t) used[geometry::at(v)] = 1;
    int next = 0;
    for (size_t v = 0; v < at.size(); ++v) {
      if (!used[v]) continue;
      at[geometry::at(next)] = at[v];
      wanted[geometry::at(next)] = wanted[v];
      pinned[geometry::at(next)] = pinned[v];
      name[v] = next++;
    }
    at.resize(geometry::at(next));
    wanted.resize(geometry::at(next));
    pinned.resize(geometry::at(next));
    for (auto& t : triangles)
      for (auto& v : t) v = name[geometry::at(v)];
  }

  /// Flips edges until the two angles facing each add up to less than 180 degrees (Delaunay), where the skin
  /// stays unfolded.
  void flip() {
    for (int pass = 0; pass < 6; ++pass) {
      const auto list = edges();
      std::unordered_map<std::uint64_t, char> known;
      known.reserve(list.size() * 2);
      for (const auto& e : list) known.emplace(edge_key(e.a, e.b), 1);
      std::vector<char> touched(triangles.size(), 0);
      int flipped = 0;
      for (const auto& e : list) {
        if (e.right < 0 || touched[geometry::at(e.left)] || touched[geometry::at(e.right)]) continue;
        const int c = opposite(triangles[geometry::at(e.left)], e.a, e.b);
        const int d = opposite(triangles[geometry::at(e.right)], e.a, e.b);
        const auto angle = [&](int v) {
          const Vector3d p = at[geometry::at(e.a)] - at[geometry::at(v)],
                         q = at[geometry::at(e.b)] - at[geometry::at(v)];
          return std::atan2(p.cross(q).norm(), p.dot(q));
        };
        if (angle(c) + angle(d) < geometry::pi + 1e-6 || known.contains(edge_key(c, d))) continue;
        if (on_midline(c) && on_midline(d)) continue;  // would lie in the mirror and be shared by four
        // left is a, b, c counter-clockwise; right is b, a, d.
        const Triangle first{e.a, d, c}, second{d, e.b, c};
        const Vector3d old =
            normal(triangles[geometry::at(e.left)]) + normal(triangles[geometry::at(e.right)]);
        const Vector3d n1 = normal(first), n2 = normal(second);
        if (n1.dot(old) <= 0.5 * n1.norm() * old.norm() || n2.dot(old) <= 0.5 * n2.norm() * old.norm())
          continue;
        triangles[geometry::at(e.left)] = first;
        triangles[geometry::at(e.right)] = second;
        touched[geometry::at(e.left)] = touched[geometry::at(e.right)] = 1;
        known.emplace(edge_key(c, d), 1);
        known.erase(edge_key(e.a, e.b));
        ++flipped;
      }
      if (flipped == 0) break;
    }
  }

  /// Moves each vertex toward the middle of the triangles around it, in the skin.
  void relax() {
    std::vector<Vector3d> sum(at.size(), Vector3d::Zero()), facing(at.size(), Vector3d::Zero());
    std::vector<double> weight(at.size(), 0);
    for (const auto& t : triangles) {
      const Vector3d n = normal(t);
      Vector3d middle = Vector3d::Zero();
      double size = 0;
      for (const int v : t) {
        middle += at[geometry::at(v)] / 3;
        size += wanted[geometry::at(v)] / 3;
      }
      // Weighted by area in units of the wanted size, so that fine parts do not spread.
      const double w = n.norm() / (size * size);
      for (const int v : t) {
        sum[geometry::at(v)] += w * middle;
        weight[geometry::at(v)] += w;
        facing[geometry::at(v)] += n;
      }
    }
    for (size_t v = 0; v < at.size(); ++v) {
      if (pinned[v] || weight[v] <= 0) continue;
      const bool midline = at[v].x() == 0;
      Vector3d n = facing[v];
      Vector3d move = sum[v] / weight[v] - at[v];
      if (midline) n.x() = move.x() = 0;
      n.normalize();
      move -= move.dot(n) * n;
      Vector3d target = onto_skin(at[v] + 0.7 * move);
      if (midline) target.x() = 0;
      // Not across the midline, and not so near that a sliver is left there.
      if (!midline) target.x() = std::max(target.x(), 0.3 * wanted[v]);
      if (!midline) target = onto_skin(target);
      // A long way means that the point was drawn to another fold of the skin.
      if ((target - at[v]).norm() < 0.6 * wanted[v]) at[v] = target;
    }
  }

  /// The vertex nearest to `p` (on the midline if p is) moves there and stays.
  int pin(const Vector3d& p) {
    int nearest = -1;
    for (int v = 0; v < static_cast<int>(at.size()); ++v)
      if (on_midline(v) == (p.x() == 0) && !pinned[geometry::at(v)] &&
          (nearest < 0 || (at[geometry::at(v)] - p).norm() < (at[geometry::at(nearest)] - p).norm()))
        nearest = v;
    at[geometry::at(nearest)] = p;
    pinned[geometry::at(nearest)] = 1;
    return nearest;
  }
};

}  // namespace

HalfMesh mesh_right_half() {
  HalfMesh mesh = first_mesh();
  for (auto& v : mesh.vertices) {
    const bool midline = v.x() == 0;
    v = onto_skin(v);
    if (midline) v.x() = 0;
  }
  Remesher remesher{mesh.vertices, mesh.triangles, std::vector<char>(mesh.vertices.size(), 0), {}};
  for (int round = 0; round < rounds; ++round) {
    remesher.measure_wanted();
    for (int pass = 0; pass < 4 && remesher.split(); ++pass) {
    }
    remesher.collapse();
    remesher.flip();
    remesher.relax();
    remesher.flip();
    remesher.relax();
  }
  const FiducialPoints points = fiducial_points();
  for (const Vector3d& p : {points.nasion, points.inion, points.right_tragus}) (void)remesher.pin(p);
  for (int round = 0; round < 4; ++round) {
    remesher.flip();
    remesher.relax();
  }
  remesher.flip();
  const auto named = [&](const Vector3d& p) {
    return static_cast<int>(std::find(mesh.vertices.begin(), mesh.vertices.end(), p) - mesh.vertices.begin());
  };
  mesh.nasion = named(points.nasion);
  mesh.inion = named(points.inion);
  mesh.right_tragus = named(points.right_tragus);
  return mesh;
}

}  // namespace scalpmark::models::generic
