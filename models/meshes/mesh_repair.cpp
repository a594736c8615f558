#include "models/meshes/mesh_repair.h"

#include <Eigen/Geometry>
#include <algorithm>
#include <array>
#include <bit>
#include <cmath>
#include <cstdint>
#include <numeric>
#include <tuple>
#include <unordered_map>

#include "geometry/base/error.h"
#include "models/files/error.h"

namespace scalpmark::models {

using Eigen::Vector3d;
using geometry::Triangle;

namespace {

// Coordinates come as single floats, which at the size of a head step by 0.00001 mm; ten steps.
constexpr double close_mm = 1e-4;
constexpr double most_unrepaired_share = 0.01;

std::size_t at(int i) {
  return static_cast<std::size_t>(i);
}

double area(const Mesh& mesh, const Triangle& t) {
  const Vector3d& a = mesh.vertices[at(t[0])];
  return 0.5 * (mesh.vertices[at(t[1])] - a).cross(mesh.vertices[at(t[2])] - a).norm();
}

using Key = std::array<std::int64_t, 3>;

/// Numbers filed under keys, all in two pieces of memory: a map with a node of its own for each takes longer
/// than everything else that is done to a sound mesh.
class Filed {
public:
  explicit Filed(std::size_t count) : first_(std::bit_ceil(2 * count + 1), -1) { entries_.reserve(count); }

  void add(const Key& key, int number) {
    int& first = first_[slot(key)];
    entries_.push_back({key, number, first});
    first = static_cast<int>(entries_.size() - 1);
  }
  /// The number filed under the key last that `fits`, or -1.
  template <class Fits>
  [[nodiscard]] int find(const Key& key, const Fits& fits) const {
    for (int i = first_[slot(key)]; i >= 0; i = entries_[at(i)].next)
      if (entries_[at(i)].key == key && fits(entries_[at(i)].number)) return entries_[at(i)].number;
    return -1;
  }
  [[nodiscard]] int find(const Key& key) const {
    return find(key, [](int) { return true; });
  }

private:
  struct Entry {
    Key key;
    int number, next;
  };
  [[nodiscard]] std::size_t slot(const Key& key) const {
    std::uint64_t h = 0;
    for (const std::int64_t p : key) {
      h ^= static_cast<std::uint64_t>(p) + 0x9e3779b97f4a7c15ULL + (h << 6U) + (h >> 2U);
      h *= 0xff51afd7ed558ccdULL;
      h ^= h >> 33U;
    }
    return static_cast<std::size_t>(h) & (first_.size() - 1);
  }

  std::vector<int> first_;  // entry by slot
  std::vector<Entry> entries_;
};

/// For each vertex the earliest one within `tolerance` of it that has no such itself, or itself.
std::vector<int> close_vertices(const std::vector<Vector3d>& vertices, double tolerance) {
  // Cells four times as wide as the tolerance: most vertices have no cell but their own within reach.
  Filed cells(vertices.size());
  std::vector<int> to(vertices.size());
  for (std::size_t v = 0; v < vertices.size(); ++v) {
    const Vector3d& p = vertices[v];
    Key own{}, low{}, high{};
    for (std::size_t k = 0; k < 3; ++k) {
      const double s = p[static_cast<Eigen::Index>(k)] / tolerance / 4;
      own[k] = static_cast<std::int64_t>(std::floor(s));
      low[k] = static_cast<std::int64_t>(std::floor(s - 0.25));
      high[k] = static_cast<std::int64_t>(std::floor(s + 0.25));
    }
    const auto is_close = [&](int other) {
      return (vertices[at(other)] - p).squaredNorm() <= tolerance * tolerance;
    };
    int same = -1;
    for (std::int64_t x = low[0]; x <= high[0] && same < 0; ++x)
      for (std::int64_t y = low[1]; y <= high[1] && same < 0; ++y)
        for (std::int64_t z = low[2]; z <= high[2] && same < 0; ++z) same = cells.find({x, y, z}, is_close);
    if (same < 0) cells.add(own, static_cast<int>(v));
    to[v] = same < 0 ? static_cast<int>(v) : same;
  }
  return to;
}

void renumber(Mesh& mesh, const std::vector<int>& to) {
  for (Triangle& t : mesh.triangles)
    for (int& corner : t) corner = to[at(corner)];
}

std::size_t drop_if(Mesh& mesh, const std::vector<char>& drop) {
  std::size_t kept = 0;
  for (std::size_t f = 0; f < mesh.triangles.size(); ++f)
    if (!drop[f]) mesh.triangles[kept++] = mesh.triangles[f];
  const std::size_t dropped = mesh.triangles.size() - kept;
  mesh.triangles.resize(kept);
  return dropped;
}

void drop_unused_vertices(Mesh& mesh) {
  std::vector<int> to(mesh.vertices.size(), -1);
  std::vector<Vector3d> kept;
  for (Triangle& t : mesh.triangles)
    for (int& corner : t) {
      int& number = to[at(corner)];
      if (number < 0) {
        number = static_cast<int>(kept.size());
        kept.push_back(mesh.vertices[at(corner)]);
      }
      corner = number;
    }
  mesh.vertices = std::move(kept);
}

std::size_t drop_collapsed(Mesh& mesh) {
  std::vector<char> drop(mesh.triangles.size(), 0);
  for (std::size_t f = 0; f < drop.size(); ++f) {
    const Triangle& t = mesh.triangles[f];
    drop[f] = t[0] == t[1] || t[1] == t[2] || t[2] == t[0];
  }
  return drop_if(mesh, drop);
}

std::size_t drop_repeated(Mesh& mesh) {
  Filed seen(mesh.triangles.size());
  std::vector<char> drop(mesh.triangles.size(), 0);
  for (std::size_t f = 0; f < drop.size(); ++f) {
    Triangle t = mesh.triangles[f];
    std::sort(t.begin(), t.end());
    const Key key{t[0], t[1], t[2]};
    drop[f] = seen.find(key) >= 0;
    if (!drop[f]) seen.add(key, static_cast<int>(f));
  }
  return drop_if(mesh, drop);
}

// --- Edges and pieces
// ------------------------------------------------------------------------------------------------

struct EdgeUse {
  int low = 0, high = 0;
  int face = 0, edge = 0;
  [[nodiscard]] bool same_edge(const EdgeUse& o) const { return low == o.low && high == o.high; }
};

/// In order of their ends, then of their faces. By buckets of the lower end, which hold few each: a sort of
/// all at once takes a good part of the time in which a mesh is read.
std::vector<EdgeUse> edge_uses(const Mesh& mesh) {
  std::vector<std::size_t> end(mesh.vertices.size() + 1, 0);
  const auto for_all = [&](const auto& visit) {
    for (std::size_t f = 0; f < mesh.triangles.size(); ++f)
      for (std::size_t k = 0; k < 3; ++k) {
        const auto [low, high] = std::minmax(mesh.triangles[f][k], mesh.triangles[f][(k + 1) % 3]);
        visit(EdgeUse{low, high, static_cast<int>(f), static_cast<int>(k)});
      }
  };
  for_all([&](const EdgeUse& use) { ++end[at(use.low) + 1]; });
  std::partial_sum(end.begin(), end.end(), end.begin());
  std::vector<EdgeUse> uses(end.back());
  for_all(
      [&](const EdgeUse& use) { uses[end[at(use.low)]++] = use; });  // end[v] moves to where v's bucket ends
  std::size_t begin = 0;
  for (std::size_t v = 0; v < mesh.vertices.size(); begin = end[v++])
    std::sort(uses.begin() + static_cast<std::ptrdiff_t>(begin),
              uses.begin() + static_cast<std::ptrdiff_t>(end[v]), [](const EdgeUse& a, const EdgeUse& b) {
                return std::tie(a.high, a.face) < std::tie(b.high, b.face);
              });
  return uses;
}

/// Calls visit(first, last) for the uses of each edge.
template <class Visit>
void for_edges(const std::vector<EdgeUse>& uses, Visit visit) {
  for (std::size_t i = 0, j = 0; i < uses.size(); i = j) {
    while (j < uses.size() && uses[i].same_edge(uses[j])) ++j;
    visit(i, j);
  }
}

/// Groups that grow together.
class Groups {
public:
  explicit Groups(std::size_t count) : up_(count) { std::iota(up_.begin(), up_.end(), 0); }
  int of(int i) {
    while (up_[at(i)] != i) i = up_[at(i)] = up_[at(up_[at(i)])];
    return i;
  }
  void join(int a, int b) { up_[at(of(a))] = of(b); }

private:
  std::vector<int> up_;
};

/// Faces joined over edges of at most `most` triangles.
Groups faces_joined(const Mesh& mesh, const std::vector<EdgeUse>& uses, std::size_t most) {
  Groups groups(mesh.triangles.size());
  for_edges(uses, [&](std::size_t i, std::size_t j) {
    if (j - i <= most)
      for (std::size_t k = i + 1; k < j; ++k) groups.join(uses[i].face, uses[k].face);
  });
  return groups;
}

std::vector<double> group_areas(const Mesh& mesh, Groups& groups) {
  std::vector<double> areas(mesh.triangles.size(), 0);
  for (std::size_t f = 0; f < mesh.triangles.size(); ++f)
    areas[at(groups.of(static_cast<int>(f)))] += area(mesh, mesh.triangles[f]);
  return areas;
}

struct Freed {
  std::size_t dropped = 0;
  double torn_share = 0;  // of the area, around edges whose parts could not be told apart
};

/// Leaves no edge with more than two triangles. At such an edge the parts that hang together elsewhere are
/// compared: all but the two largest go whole. Where that does not help (a part that meets itself), the
/// triangles around the edge go.
Freed free_edges(Mesh& mesh) {
  Freed freed;
  double whole = 0;
  for (const Triangle& t : mesh.triangles) whole += area(mesh, t);
  for (;;) {
    const auto uses = edge_uses(mesh);
    Groups parts = faces_joined(mesh, uses, 2);
    const auto areas = group_areas(mesh, parts);
    std::vector<char> part_goes(mesh.triangles.size(), 0), drop(mesh.triangles.size(), 0);
    bool crowded = false, helped = false;
    for_edges(uses, [&](std::size_t i, std::size_t j) {
      if (j - i <= 2) return;
      crowded = true;
      std::vector<int> around;
      for (std::size_t k = i; k < j; ++k) around.push_back(parts.of(uses[k].face));
      std::sort(around.begin(), around.end(),
                [&](int a, int b) { return std::pair(-areas[at(a)], a) < std::pair(-areas[at(b)], b); });
      // Both places may belong to the largest part; nothing of the part in second place may go then.
      for (std::size_t k = 2; k < around.size(); ++k)
        if (around[k] != around[0] && around[k] != around[1]) {
          part_goes[at(around[k])] = 1;
          helped = true;
        }
    });
    if (!crowded) return freed;
    for (std::size_t f = 0; f < drop.size(); ++f) drop[f] = part_goes[at(parts.of(static_cast<int>(f)))];
    if (!helped) {
      for_edges(uses, [&](std::size_t i, std::size_t j) {
        if (j - i <= 2) return;
        // A part smaller than the rest that meets itself here goes whole, else only the triangles at the
        // edge.
        for (std::size_t k = i; k < j; ++k) drop[at(uses[k].face)] = 1;
      });
      for (std::size_t f = 0; f < drop.size(); ++f)
        if (drop[f]) freed.torn_share += area(mesh, mesh.triangles[f]) / whole;
    }
    freed.dropped += drop_if(mesh, drop);
  }
}

/// Turns triangles so that neighbours agree. False when that cannot be (one-sided).
bool make_agree(Mesh& mesh) {
  const auto uses = edge_uses(mesh);
  std::vector<std::array<int, 3>> next(mesh.triangles.size(), {-1, -1, -1});
  for_edges(uses, [&](std::size_t i, std::size_t j) {
    if (j - i != 2) return;
    next[at(uses[i].face)][at(uses[i].edge)] = uses[i + 1].face;
    next[at(uses[i + 1].face)][at(uses[i + 1].edge)] = uses[i].face;
  });
  std::vector<Triangle> turned = mesh.triangles;
  const auto runs = [&](int face, int from, int to) {
    const Triangle& t = turned[at(face)];
    for (std::size_t k = 0; k < 3; ++k)
      if (t[k] == from && t[(k + 1) % 3] == to) return true;
    return false;
  };
  std::vector<char> done(turned.size(), 0);
  for (std::size_t seed = 0; seed < turned.size(); ++seed) {
    if (done[seed]) continue;
    done[seed] = 1;
    std::vector<int> waiting{static_cast<int>(seed)};
    while (!waiting.empty()) {
      const int f = waiting.back();
      waiting.pop_back();
      for (std::size_t k = 0; k < 3; ++k) {
        const int other = next[at(f)][k];
        if (other < 0) continue;
        const int a = mesh.triangles[at(f)][k], b = mesh.triangles[at(f)][(k + 1) % 3];
        const bool agree = runs(f, a, b) != runs(other, a, b);
        if (agree && done[at(other)]) continue;
        if (done[at(other)]) return false;
        if (!agree) std::swap(turned[at(other)][1], turned[at(other)][2]);
        done[at(other)] = 1;
        waiting.push_back(other);
      }
    }
  }
  mesh.triangles = std::move(turned);
  return true;
}

/// Six times the volume seen from the middle of the corners; for an open skin the sign still says which way
/// most of it faces.
double signed_volume(const Mesh& mesh) {
  Vector3d middle = Vector3d::Zero();
  for (const Vector3d& v : mesh.vertices) middle += v / static_cast<double>(mesh.vertices.size());
  double volume = 0;
  for (const Triangle& t : mesh.triangles)
    volume += (mesh.vertices[at(t[0])] - middle)
                  .dot((mesh.vertices[at(t[1])] - middle).cross(mesh.vertices[at(t[2])] - middle));
  return volume;
}

/// A vertex of its own for each fan of triangles that meets others in that vertex only.
std::size_t part_touching_fans(Mesh& mesh) {
  const auto uses = edge_uses(mesh);
  // Corners (3 per face) that belong to one fan.
  Groups corners(3 * mesh.triangles.size());
  const auto corner_of = [&](int face, int vertex) {
    const Triangle& t = mesh.triangles[at(face)];
    return 3 * face + (t[0] == vertex ? 0 : t[1] == vertex ? 1 : 2);
  };
  for_edges(uses, [&](std::size_t i, std::size_t j) {
    if (j - i != 2) return;
    for (const int v : {uses[i].low, uses[i].high})
      corners.join(corner_of(uses[i].face, v), corner_of(uses[i + 1].face, v));
  });
  std::vector<int> fan_of_vertex(mesh.vertices.size(), -1);
  std::unordered_map<int, int> own_vertex;  // of further fans
  std::size_t parted = 0;
  for (std::size_t f = 0; f < mesh.triangles.size(); ++f)
    for (std::size_t k = 0; k < 3; ++k) {
      int& corner = mesh.triangles[f][k];
      const int fan = corners.of(static_cast<int>(3 * f + k));
      int& first = fan_of_vertex[at(corner)];
      if (first < 0) first = fan;
      if (first == fan) continue;
      const auto [found, added] = own_vertex.emplace(fan, static_cast<int>(mesh.vertices.size()));
      if (added) {
        mesh.vertices.push_back(Vector3d(mesh.vertices[at(corner)]));
        ++parted;
      }
      corner = found->second;
    }
  return parted;
}

}  // namespace

void merge_equal_vertices(Mesh& mesh) {
  Filed first(mesh.vertices.size());
  std::vector<int> to(mesh.vertices.size());
  std::vector<Vector3d> kept;
  kept.reserve(mesh.vertices.size());
  for (std::size_t v = 0; v < mesh.vertices.size(); ++v) {
    Key key{};
    for (std::size_t k = 0; k < 3; ++k)  // adding zero makes -0 and 0 the same
      key[k] = std::bit_cast<std::int64_t>(mesh.vertices[v][static_cast<Eigen::Index>(k)] + 0.0);
    to[v] = first.find(key);
    if (to[v] >= 0) continue;
    to[v] = static_cast<int>(kept.size());
    first.add(key, to[v]);
    kept.push_back(mesh.vertices[v]);
  }
  mesh.vertices = std::move(kept);
  renumber(mesh, to);
}

void merge_close_vertices(Mesh& mesh, double tolerance_mm) {
  renumber(mesh, close_vertices(mesh.vertices, tolerance_mm));
  drop_collapsed(mesh);
  drop_unused_vertices(mesh);
}

std::optional<geometry::Surface> skin_as_it_stands(const Mesh& mesh) {
  std::optional<geometry::Surface> skin;
  try {
    skin.emplace(mesh.vertices, mesh.triangles);
  } catch (const geometry::GeometryError&) {
    return {};  // what is wrong is for repair_mesh to find
  }
  // One piece in which every vertex has all its triangles around it, one after the other.
  const std::size_t faces = mesh.triangles.size();
  std::vector<char> reached(faces, 0);
  std::vector<int> waiting{0};
  reached[0] = 1;
  std::size_t count = 1;
  while (!waiting.empty()) {
    const int f = waiting.back();
    waiting.pop_back();
    for (int k = 0; k < 3; ++k) {
      const int other = skin->neighbour(f, k).face;
      if (other < 0 || reached[at(other)]) continue;
      reached[at(other)] = 1;
      ++count;
      waiting.push_back(other);
    }
  }
  if (count != faces) return {};
  std::size_t corners = 0;
  for (int v = 0; v < static_cast<int>(mesh.vertices.size()); ++v) {
    const int first = skin->face_at(v);
    if (first < 0) return {};
    for (int f = first; f >= 0;) {
      ++corners;
      const Triangle& t = mesh.triangles[at(f)];
      const int k = t[0] == v ? 0 : t[1] == v ? 1 : 2;
      f = skin->neighbour(f, (k + 2) % 3).face;
      if (f == first) break;
    }
  }
  if (corners != 3 * faces || !(signed_volume(mesh) > 0)) return {};
  return skin;
}

bool has_close_vertices(const std::vector<Vector3d>& vertices) {
  const std::vector<int> close = close_vertices(vertices, close_mm);
  for (std::size_t v = 0; v < close.size(); ++v)
    if (close[v] != static_cast<int>(v)) return true;
  return false;
}

LargestPiece largest_piece(const Mesh& mesh) {
  LargestPiece largest;
  if (mesh.triangles.empty()) return largest;
  Groups pieces = faces_joined(mesh, edge_uses(mesh), mesh.triangles.size());
  const auto areas = group_areas(mesh, pieces);
  const auto best = static_cast<int>(std::max_element(areas.begin(), areas.end()) - areas.begin());
  const double whole = std::accumulate(areas.begin(), areas.end(), 0.0);
  const int winner = pieces.of(best);
  largest.mesh.vertices = mesh.vertices;
  for (std::size_t f = 0; f < mesh.triangles.size(); ++f) {
    const int piece = pieces.of(static_cast<int>(f));
    if (piece == static_cast<int>(f)) ++largest.pieces;
    if (piece == winner) largest.mesh.triangles.push_back(mesh.triangles[f]);
  }
  largest.share = whole > 0 ? areas[at(winner)] / whole : 1;
  drop_unused_vertices(largest.mesh);
  return largest;
}

Mesh repair_mesh(Mesh mesh, const std::string& name, std::vector<Message>& notes) {
  const std::size_t before = mesh.triangles.size();
  merge_close_vertices(mesh, close_mm);
  std::size_t collapsed = before - mesh.triangles.size();
  const std::size_t repeated = drop_repeated(mesh);
  const Freed freed = free_edges(mesh);
  if (freed.torn_share > most_unrepaired_share)
    throw ModelError(Message::of(
        "%1 has too many edges where more than two triangles meet to be repaired here; repair the mesh in the program that made it.",
        name));
  LargestPiece largest = largest_piece(mesh);
  mesh = std::move(largest.mesh);
  double whole = 0;
  for (const Triangle& t : mesh.triangles) whole += area(mesh, t);
  if (mesh.triangles.empty() || !(whole > 0))
    throw ModelError(
        Message::of("%1 holds no triangle with an area; choose a mesh of the head's skin.", name));

  if (collapsed > 0)
    notes.push_back(collapsed == 1 ? Message::of("Left out 1 triangle without area.")
                                   : Message::of("Left out %1 triangles without area.", collapsed));
  if (repeated > 0)
    notes.push_back(repeated == 1 ? Message::of("Left out 1 triangle that was there twice.")
                                  : Message::of("Left out %1 triangles that were there twice.", repeated));
  if (freed.dropped > 0)
    notes.push_back(
        freed.dropped == 1
            ? Message::of("Left out 1 triangle at edges where more than two met.")
            : Message::of("Left out %1 triangles at edges where more than two met.", freed.dropped));
  if (largest.pieces > 1)
    notes.push_back(Message::of("Kept the largest of %1 pieces (%2 % of the surface).", largest.pieces,
                                geometry::number(100 * largest.share)));

  const std::vector<Triangle> as_given = mesh.triangles;
  if (!make_agree(mesh))
    throw ModelError(Message::of(
        "%1 is a surface with one side only, on which outside cannot be told; repair the mesh in the program that made it.",
        name));
  if (signed_volume(mesh) < 0)
    for (Triangle& t : mesh.triangles) std::swap(t[1], t[2]);
  std::size_t turned = 0;
  for (std::size_t f = 0; f < as_given.size(); ++f) {
    const Triangle &a = as_given[f], &b = mesh.triangles[f];
    const bool same = a == b || Triangle{a[1], a[2], a[0]} == b || Triangle{a[2], a[0], a[1]} == b;
    if (!same) ++turned;
  }
  if (turned > 0)
    notes.push_back(turned == 1 ? Message::of("Turned 1 triangle that faced inward.")
                                : Message::of("Turned %1 triangles that faced inward.", turned));
  if (const std::size_t parted = part_touching_fans(mesh); parted > 0)
    notes.push_back(
        parted == 1
            ? Message::of("Parted the skin at 1 point where it touched itself in a point only.")
            : Message::of("Parted the skin at %1 points where it touched itself in a point only.", parted));
  return mesh;
}

}  // namespace scalpmark::models
