#include "viewer/stage/scene/field_shown.h"

#include "geometry/base/error.h"

namespace scalpmark::viewer {

std::shared_ptr<const geometry::CoilField> field_under(const geometry::Head& head,
                                                       const geometry::Cortex* brain,
                                                       const geometry::Coil& coil,
                                                       const geometry::Placement& placement) {
  try {
    return std::make_shared<const geometry::CoilField>(
        geometry::coil_field(head.skin(), brain, coil, placement));
  } catch (const geometry::GeometryError&) {
    return {};
  }
}

}  // namespace scalpmark::viewer
