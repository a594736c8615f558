#include "models/meshes/close_vertices.h"

#include <catch2/catch.hpp>

using namespace scalpmark;
using Eigen::Vector3d;

TEST_CASE("vertices count as close within a ten-thousandth of a millimetre, across any cell's wall") {
  for (const double at : {0.0, 1e-4, 4e-4, 100.0, -73.00005}) {
    CAPTURE(at);
    const Vector3d p(at, -at, 2 * at);
    for (const Vector3d& way : {Vector3d(1, 0, 0), Vector3d(-1, 0, 0), Vector3d(0.577, -0.577, 0.577)}) {
      CHECK(models::has_close_vertices({p, p + 0.9e-4 * way}));
      CHECK_FALSE(models::has_close_vertices({p, p + 1.2e-4 * way}));
    }
  }
}
