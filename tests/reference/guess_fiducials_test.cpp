#include "geometry/head/guess_fiducials.h"

#include <Eigen/Geometry>
#include <catch2/catch.hpp>
#include <iostream>

#include "models/generic/generic_head.h"
#include "tests/support/template_head.h"

using namespace scalpmark;
using Eigen::Vector3d;

// The template head of Debian's mricron-data; its points as published with python3-mne (standard_1005.elc).
TEST_CASE("on the template head, upright or tilted, the guess lands within 15 mm of every published point") {
  const geometry::Head& head = tests::template_head();
  for (const double tilt_deg : {0.0, 35.0}) {
    const Eigen::AngleAxisd tilt(tilt_deg * M_PI / 180, Vector3d(1, -1, 0.3).normalized());
    std::vector<Vector3d> turned = head.skin().vertices();
    for (Vector3d& p : turned) p = tilt * p;
    const auto guess =
        geometry::guess_fiducials(models::generic_head(), head.skin().moved(std::move(turned)));
    const auto& truth = head.fiducials().at;
    const auto off = [&](const char* name, const Vector3d& guessed, const Vector3d& published) {
      const double mm = (guessed - tilt * published).norm();
      std::cout << "guess at " << tilt_deg << " degrees, " << name << ": " << mm << " mm off\n";
      CHECK(mm < 15);
    };
    off("nasion", guess.at.nasion, truth.nasion);
    off("inion", guess.at.inion, truth.inion);
    off("left tragus", guess.at.left_tragus, truth.left_tragus);
    off("right tragus", guess.at.right_tragus, truth.right_tragus);
  }
}
