#pragma once

#include <vector>

#include "models/meshes/mesh.h"

namespace scalpmark::models {

/// A ball around a mark.
struct FineBall {
  Eigen::Vector3d centre = Eigen::Vector3d::Zero();
  double radius_mm = 0;
};

/// Halves edges until no triangle that reaches into one of the balls has one longer than `edge_mm`. Triangles
/// go on sharing their edges whole: the longest edge of such a triangle is halved for both that share it
/// (longest-edge bisection, Rivara 1984, Int J Numer Meth Engng 20:745-756, memory), and the surface is where
/// it was. Says of each triangle whether it reaches into a ball.
[[nodiscard]] std::vector<char> make_finer_near(Mesh& mesh, const std::vector<FineBall>& balls,
                                                double edge_mm);

}  // namespace scalpmark::models
