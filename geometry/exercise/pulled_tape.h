#pragma once

#include <Eigen/Core>
#include <vector>

#include "geometry/head/head.h"

namespace scalpmark::geometry {

/// A measuring tape in the hand, as it lies when it is pulled tight.
struct PulledTape {
  std::vector<Eigen::Vector3d> line;  ///< on the skin, in the air where it bridges a hollow
  double length_mm = 0;               ///< from the first point to the last; closed: all around

  /// The place `mm` along it, for its printed scale; past its ends, the ends.
  [[nodiscard]] Eigen::Vector3d at_mm(double mm) const;
};

/// The tape held at these skin points, two or more, in their order; closed: back to the first. Each three
/// points that follow one another, ends shared, hold a taut tape in their plane (tapes/tape.h), which is how
/// the tape from nasion over the vertex to inion lies, and a closed one held at the front, one side, the back
/// and the other side. Two points alone: in the plane that holds the skin's mean direction there, and from
/// one side of the head to the other (nasion to inion, tragus to tragus) more and more the head's own up, so
/// over the top. Quick enough for every frame of a drag. Refuses (GeometryError) fewer than two points, two
/// that follow one another in one place, and a skin on which no such tape can be laid.
[[nodiscard]] PulledTape pull_tape(const Head& head, const std::vector<Eigen::Vector3d>& held_at,
                                   bool closed = false);

}  // namespace scalpmark::geometry
