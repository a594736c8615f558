#include "models/meshes/mesh_repair.h"

#include <algorithm>
#include <utility>

#include "geometry/base/text.h"
#include "models/files/error.h"
#include "models/meshes/close_vertices.h"
#include "models/meshes/mesh_pieces.h"
#include "models/meshes/number_table.h"
#include "models/meshes/sidedness.h"
#include "models/meshes/touching_fans.h"

namespace scalpmark::models {

using geometry::Triangle;

namespace {

constexpr double most_unrepaired_share = 0.01;

std::size_t drop_repeated(Mesh& mesh) {
  NumberTable seen(mesh.triangles.size());
  std::vector<char> drop(mesh.triangles.size(), 0);
  for (std::size_t f = 0; f < drop.size(); ++f) {
    Triangle t = mesh.triangles[f];
    std::sort(t.begin(), t.end());
    const NumberTable::Key key{t[0], t[1], t[2]};
    drop[f] = seen.find(key) >= 0;
    if (!drop[f]) seen.add(key, static_cast<int>(f));
  }
  return drop_if(mesh, drop);
}

std::string count_of(std::size_t count, const char* one, const char* many) {
  return std::to_string(count) + " " + (count == 1 ? one : many);
}

}  // namespace

Mesh repair_mesh(Mesh mesh, const std::string& name, std::vector<std::string>& notes) {
  const std::size_t before = mesh.triangles.size();
  merge_close_vertices(mesh, close_mm);
  std::size_t collapsed = before - mesh.triangles.size();
  const std::size_t repeated = drop_repeated(mesh);
  const NonManifoldEdges crowded = drop_at_non_manifold_edges(mesh);
  if (crowded.torn_share > most_unrepaired_share)
    throw ModelError(name +
                     " has too many edges where more than two triangles meet to be repaired here; repair the "
                     "mesh in the program that made it.");
  LargestPiece largest = largest_piece(mesh);
  mesh = std::move(largest.mesh);
  double whole = 0;
  for (const Triangle& t : mesh.triangles) whole += triangle_area(mesh, t);
  if (mesh.triangles.empty() || !(whole > 0))
    throw ModelError(name + " holds no triangle with an area; choose a mesh of the head's skin.");

  if (collapsed > 0)
    notes.push_back("Left out " + count_of(collapsed, "triangle without area.", "triangles without area."));
  if (repeated > 0)
    notes.push_back("Left out " +
                    count_of(repeated, "triangle that was there twice.", "triangles that were there twice."));
  if (crowded.dropped > 0)
    notes.push_back("Left out " + count_of(crowded.dropped, "triangle", "triangles") +
                    " at edges where more than two met.");
  if (largest.pieces > 1)
    notes.push_back("Kept the largest of " + std::to_string(largest.pieces) + " pieces (" +
                    geometry::to_text(100 * largest.share) + " % of the surface).");

  const std::vector<Triangle> as_given = mesh.triangles;
  if (!make_agree(mesh))
    throw ModelError(
        name +
        " is a surface with one side only, on which outside cannot be told; repair the mesh in the "
        "program that made it.");
  if (signed_volume(mesh) < 0)
    for (Triangle& t : mesh.triangles) std::swap(t[1], t[2]);
  std::size_t turned = 0;
  for (std::size_t f = 0; f < as_given.size(); ++f) {
    const Triangle &a = as_given[f], &b = mesh.triangles[f];
    const bool same = a == b || Triangle{a[1], a[2], a[0]} == b || Triangle{a[2], a[0], a[1]} == b;
    if (!same) ++turned;
  }
  if (turned > 0)
    notes.push_back("Turned " +
                    count_of(turned, "triangle that faced inward.", "triangles that faced inward."));
  if (const std::size_t parted = part_touching_fans(mesh); parted > 0)
    notes.push_back("Parted the skin at " + count_of(parted, "point", "points") +
                    " where it touched itself in a point only.");
  return mesh;
}

}  // namespace scalpmark::models
