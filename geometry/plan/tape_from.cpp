#include "geometry/plan/tape_from.h"

#include "geometry/paths/shortest_path.h"

namespace scalpmark::geometry {

TapeFrom tape_from(const Head& head, const SurfacePoint& point) {
  const Surface& skin = head.skin();
  if (head.has_fields()) {
    const Head::Fields& fields = head.fields();
    return {fields.vertex.at(skin, point), fields.nasion.at(skin, point), fields.left_tragus.at(skin, point),
            fields.right_tragus.at(skin, point)};
  }
  const Fiducials& at = head.fiducials().at;
  const std::vector<double> mm = shortest_distances(
      skin, point,
      {head.vertex(), skin.closest(at.nasion), skin.closest(at.left_tragus), skin.closest(at.right_tragus)});
  return {mm[0], mm[1], mm[2], mm[3]};
}

}  // namespace scalpmark::geometry
