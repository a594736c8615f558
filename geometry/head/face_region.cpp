#include "geometry/head/face_region.h"

#include <Eigen/Geometry>

namespace scalpmark::geometry {

bool on_face(const Head& head, const Eigen::Vector3d& at) {
  const HeadAxes& axes = head.axes();
  const Fiducials& f = head.fiducials().at;
  const Eigen::Vector3d above = axes.right.cross((f.nasion - axes.origin).normalized());
  return (at - axes.origin).dot(axes.front) > 0 && (at - axes.origin).dot(above) < 0;
}

}  // namespace scalpmark::geometry
