#include "viewer/stage/scene/scene.h"

namespace scalpmark::viewer {

using Eigen::Vector3d;

std::vector<std::vector<Vector3d>> rims(const CoilBody& coil) {
  std::vector<std::vector<Vector3d>> all;
  for (const auto& part : coil.coil.parts)
    for (const double z : {part.bottom_mm, part.top_mm}) {
      std::vector<Vector3d> rim;
      for (const auto& flat : part.outline) {
        const Vector3d p = geometry::bent({flat.x(), flat.y(), z}, part.bend_deg);
        rim.push_back(coil.origin + p.x() * coil.right + p.y() * coil.front + p.z() * coil.normal);
      }
      if (!rim.empty()) rim.push_back(rim.front());
      all.push_back(std::move(rim));
    }
  return all;
}

}  // namespace scalpmark::viewer
