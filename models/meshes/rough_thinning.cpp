#include "models/meshes/rough_thinning.h"

#include <meshoptimizer.h>

#include <algorithm>
#include <utility>
#include <vector>

#include "geometry/base/error.h"
#include "models/files/error.h"
#include "models/meshes/mesh_repair.h"

namespace scalpmark::models {

using geometry::Triangle;

namespace {

Mesh collapsed_at_once(const Mesh& mesh, std::size_t most) {
  std::vector<unsigned> corners;
  corners.reserve(3 * mesh.triangles.size());
  for (const Triangle& t : mesh.triangles)
    for (const int v : t) corners.push_back(static_cast<unsigned>(v));
  std::vector<float> places;  // it takes no others; only the order of collapses hangs on them
  places.reserve(3 * mesh.vertices.size());
  for (const auto& v : mesh.vertices)
    for (int k = 0; k < 3; ++k) places.push_back(static_cast<float>(v[k]));
  constexpr float any_error = 1;  // how far the skin moved is measured after
  corners.resize(meshopt_simplify(corners.data(), corners.data(), corners.size(), places.data(),
                                  mesh.vertices.size(), 3 * sizeof(float), 3 * most, any_error,
                                  meshopt_SimplifyLockBorder, nullptr));
  Mesh thinned{mesh.vertices, {}};
  for (std::size_t i = 0; i + 2 < corners.size(); i += 3)
    thinned.triangles.push_back(
        {static_cast<int>(corners[i]), static_cast<int>(corners[i + 1]), static_cast<int>(corners[i + 2])});
  return thinned;
}

/// Where a collapse has folded skin flat on itself, two triangles lie back to back: without them the skin is
/// as if they had not been.
void drop_back_to_back(Mesh& mesh) {
  const auto sorted = [&](std::size_t f) {
    Triangle t = mesh.triangles[f];
    std::sort(t.begin(), t.end());
    return t;
  };
  std::vector<std::pair<Triangle, std::size_t>> all;
  all.reserve(mesh.triangles.size());
  for (std::size_t f = 0; f < mesh.triangles.size(); ++f) all.emplace_back(sorted(f), f);
  std::sort(all.begin(), all.end());
  std::vector<char> drop(mesh.triangles.size(), 0);
  for (std::size_t i = 0; i + 1 < all.size(); ++i) {
    if (all[i].first != all[i + 1].first) continue;
    drop[all[i].second] = drop[all[i + 1].second] = 1;
    ++i;
  }
  drop_if(mesh, drop);
}

/// How many borders, and corners on them.
std::pair<std::size_t, std::size_t> borders_of(const Mesh& mesh) {
  const geometry::Surface skin(mesh.vertices, mesh.triangles);
  std::size_t corners = 0;
  for (const auto& loop : skin.borders()) corners += loop.size();
  return {skin.borders().size(), corners};
}

}  // namespace

std::optional<Mesh> thinned_roughly(const Mesh& mesh, std::size_t most) {
  try {
    Mesh thinned = collapsed_at_once(mesh, most);
    drop_back_to_back(thinned);
    drop_unused_vertices(thinned);
    std::vector<geometry::Message> not_the_scans;
    thinned = repair_mesh(std::move(thinned), "", not_the_scans);
    if (borders_of(thinned) != borders_of(mesh)) return {};
    return thinned;
  } catch (const geometry::GeometryError&) {
    return {};
  } catch (const ModelError&) {
    return {};
  }
}

}  // namespace scalpmark::models
