#pragma once

#include <Eigen/Core>
#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "geometry/coil/coil.h"
#include "geometry/coil/pose.h"
#include "geometry/surface/surface.h"

namespace scalpmark::geometry {

/// One flat piece of a coil that faces the head: the underside of a part, or a wall of a bent part that leans
/// over. Coil frame, mm. Seen along the coil's normal, together they are all that skin can run into.
struct Underside {
  size_t part = 0;  ///< index into the coil's parts
  bool is_wall = false;
  std::vector<Eigen::Vector2d> outline;  ///< x, y
  double height_mm = 0;                  ///< over x = y = 0
  Eigen::Vector2d slope{0, 0};           ///< of the height along x and y
  [[nodiscard]] double height_at(const Eigen::Vector2d& at) const { return height_mm + slope.dot(at); }
};

[[nodiscard]] std::vector<Underside> undersides(const Coil& coil);

/// The height of the lowest piece over a place, walls apart; empty beside the coil and in a hole of it.
[[nodiscard]] std::optional<double> lowest_over(const std::vector<Underside>& pieces,
                                                const Eigen::Vector2d& at);

/// Further below a coil than this, mm, there is nothing a gap is worth naming to.
inline constexpr double deepest_gap_mm = 150;

/// The skin that rises highest over an underside, along the coil's normal.
struct Rise {
  double mm = 0;                  ///< over the underside; negative: below it, a gap
  Eigen::Vector3d skin{0, 0, 0};  ///< where, in the head's frame
  Eigen::Vector2d under{0, 0};    ///< the same in the coil's frame
};

/// The highest skin within the outline, the coil's face lying in the pose with no lift; only what rises above
/// `known_mm`, and only faces that count. Exact on the triangles.
[[nodiscard]] std::optional<Rise> highest_rise(const Surface& skin, const Underside& underside,
                                               const CoilPose& pose, double known_mm,
                                               const std::function<bool(int face)>& counts = {});

/// Whether a place lies within an outline.
[[nodiscard]] bool within(const std::vector<Eigen::Vector2d>& outline, const Eigen::Vector2d& at);

}  // namespace scalpmark::geometry
