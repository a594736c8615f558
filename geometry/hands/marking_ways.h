#pragma once

#include <Eigen/Core>
#include <array>
#include <cstddef>
#include <vector>

#include "geometry/coil/coil_setup.h"

namespace scalpmark::geometry {

/// Ways to mark where a coil lies. Beside the site mark, on the skin or the cap: one mark in front; a line
/// drawn along the front edge; one in front and one at a side; one at each front corner.
enum class MarkingWay { front, front_line, front_and_side, corners };
inline constexpr std::array all_marking_ways{MarkingWay::front, MarkingWay::front_line,
                                             MarkingWay::front_and_side, MarkingWay::corners};

/// How long the line along the front edge is, mm.
inline constexpr double front_line_mm = 40;

/// A place of the coil's edge that is laid over a mark.
struct CoilPlace {
  Eigen::Vector3d on_coil = Eigen::Vector3d::Zero();  ///< in the coil's frame (coil.h)
  size_t look = 0;                                    ///< places with the same number are looked at in one
};

/// Where a way's marks are met on a coil, taken from its parts' outlines, the handle apart. The middle of its
/// front edge lies at the setup's centre_to_edge_mm, and what else is in front moves with it. `right_side`:
/// the side mark is at the coil's right.
[[nodiscard]] std::vector<CoilPlace> coil_places(const CoilSetup& setup, MarkingWay way,
                                                 bool right_side = true);

/// How high the coil's casing is over its face at its centre, mm: what the eye looks past at the site mark.
[[nodiscard]] double height_over_centre(const Coil& coil);

}  // namespace scalpmark::geometry
