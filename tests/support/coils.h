#pragma once

#include "geometry/coil/coil.h"

namespace scalpmark::tests {

/// A plain slab, 170 mm wide and 120 mm deep, 20 mm thick.
inline geometry::Coil flat_coil() {
  geometry::Coil coil;
  coil.model = "slab";
  coil.title = "Plain slab";
  coil.parts = {{"casing", {{-85, -60}, {85, -60}, {85, 60}, {-85, 60}}, 0, 20}};
  return coil;
}

}  // namespace scalpmark::tests
