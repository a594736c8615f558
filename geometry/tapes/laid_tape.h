#pragma once

#include <Eigen/Core>
#include <optional>
#include <vector>

#include "geometry/surface/surface.h"

namespace scalpmark::geometry {

/// Where a measuring tape laid on the skin comes to.
struct LaidTape {
  SurfacePoint end;
  Eigen::Vector3d at = Eigen::Vector3d::Zero();
  std::vector<Eigen::Vector3d> line;  ///< the tape, for drawing
};

/// Lays a tape of `length_mm` on the skin from `start` in the direction `heading` (unit; its part in the skin
/// counts). A tape is a band about a centimetre wide: it bridges pits and rides over grain that a line
/// without width would wander in. So the tape goes in short taut stretches, each in the plane of its heading
/// and of the skin's direction averaged over the band's width, the heading carried on without turning: the
/// geodesic of the skin as a tape feels it. On a smooth skin this is the straightest geodesic of walk.h; on a
/// scanned one, where that line jumps by millimetres from one spot to the next, this one moves as evenly as
/// its start. Empty where the skin ends before the tape does. A negative or non-finite length is refused
/// (GeometryError).
[[nodiscard]] std::optional<LaidTape> lay_tape(const Surface& skin, const SurfacePoint& start,
                                               const Eigen::Vector3d& heading, double length_mm);

/// The skin point whose outward direction, averaged over a fingertip's width, points at `from`: the nearest
/// skin, by the same reasoning free of grain. Empty where the skin ends first.
[[nodiscard]] std::optional<SurfacePoint> nearest_skin(const Surface& skin, const Eigen::Vector3d& from);

}  // namespace scalpmark::geometry
