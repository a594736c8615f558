#pragma once

#include <Eigen/Core>
#include <vector>

#include "viewer/stage/scene/scene.h"

namespace scalpmark::viewer {

/// A measuring tape lying along a line of the skin, as the trade knows it: a band with a line at every
/// centimetre and its number, and a shorter one at every half (in inches: at every quarter). Its zero is at
/// the first point. It goes on straight beyond the last, where a hand holds it, by `tail_mm`. `normals`: the
/// skin's at each point, unit.
[[nodiscard]] Ribbon printed_tape(const std::vector<Eigen::Vector3d>& line,
                                  const std::vector<Eigen::Vector3d>& normals);

/// What of the tape is seen beyond the hand.
inline constexpr double tail_mm = 14;

}  // namespace scalpmark::viewer
