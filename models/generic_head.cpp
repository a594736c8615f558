#include "models/generic_head.h"

#include "models/generic/half_mesh.h"

namespace scalpmark::models {

const geometry::Head& generic_head() {
  static const geometry::Head head = [] {
    const generic::HalfMesh half = generic::compiled_in_half();
    const auto at = [&](int v) { return half.vertices[static_cast<size_t>(v)]; };
    geometry::Fiducials fiducials;
    fiducials.nasion = at(half.nasion);
    fiducials.inion = at(half.inion);
    fiducials.right_tragus = fiducials.left_tragus = at(half.right_tragus);
    fiducials.left_tragus.x() *= -1;
    return geometry::Head(generic::mirrored(half), fiducials);
  }();
  return head;
}

}  // namespace scalpmark::models
