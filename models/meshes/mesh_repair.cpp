#include "models/meshes/mesh_repair.h"

#include <algorithm>
#include <utility>

#include "geometry/base/error.h"
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

}  // namespace

Mesh repair_mesh(Mesh mesh, const std::string& name, std::vector<Message>& notes) {
  const std::size_t before = mesh.triangles.size();
  merge_close_vertices(mesh, close_mm);
  std::size_t collapsed = before - mesh.triangles.size();
  const std::size_t repeated = drop_repeated(mesh);
  const NonManifoldEdges crowded = drop_at_non_manifold_edges(mesh);
  if (crowded.torn_share > most_unrepaired_share)
    throw ModelError(Message::of(
        "%1 has too many edges where more than two triangles meet to be repaired here; repair the mesh in the program that made it.",
        name));
  LargestPiece largest = largest_piece(mesh);
  mesh = std::move(largest.mesh);
  double whole = 0;
  for (const Triangle& t : mesh.triangles) whole += triangle_area(mesh, t);
  if (mesh.triangles.empty() || !(whole > 0))
    throw ModelError(
        Message::of("%1 holds no triangle with an area; choose a mesh of the head's skin.", name));

  if (collapsed > 0)
    notes.push_back(collapsed == 1 ? Message::of("Left out 1 triangle without area.")
                                   : Message::of("Left out %1 triangles without area.", collapsed));
  if (repeated > 0)
    notes.push_back(repeated == 1 ? Message::of("Left out 1 triangle that was there twice.")
                                  : Message::of("Left out %1 triangles that were there twice.", repeated));
  if (crowded.dropped > 0)
    notes.push_back(crowded.dropped == 1
                        ? Message::of("Left out 1 triangle at edges where more than two triangles met.")
                        : Message::of("Left out %1 triangles at edges where more than two triangles met.",
                                      crowded.dropped));
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
    notes.push_back(parted == 1
                        ? Message::of("Parted the skin at 1 point where it touched itself.")
                        : Message::of("Parted the skin at %1 points where it touched itself.", parted));
  return mesh;
}

}  // namespace scalpmark::models
