#include "models/meshes/sound_skin.h"

#include <vector>

#include "geometry/base/error.h"
#include "geometry/base/index.h"
#include "models/meshes/sidedness.h"

namespace scalpmark::models {

using geometry::Triangle;

using geometry::at;

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

}  // namespace scalpmark::models
