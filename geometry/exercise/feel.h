#pragma once

#include <Eigen/Core>

#include "geometry/head/head.h"

namespace scalpmark::geometry {

/// What a finger feels of the bone under the skin: the inion is a bump, the nasion a hollow.
struct Felt {
  double height_mm = 0;  ///< of the bone over what is around it; a hollow is negative
  /// The same for a tint, 0 (flat) to 1 (the top of the bump, the bottom of the hollow).
  double share = 0;
};

/// How high a bump, how deep a hollow, how wide its flat top or bottom, and how far it is felt at all, mm.
/// Ours, no source: the flat part is as wide as hands are off that feel for it (HandErrors::fiducial_mm), so
/// that nobody can find the point by the tint more closely than a finger could.
inline constexpr double bump_mm = 4, hollow_mm = -5, flat_mm = 4, felt_mm = 14;

/// A press on the skin there.
[[nodiscard]] Felt feel(const Head& head, const Eigen::Vector3d& at);

}  // namespace scalpmark::geometry
