#pragma once

#include <Eigen/Core>

namespace scalpmark::geometry {

/// Nasion-inion, tragus-tragus and circumference, mm, of an ellipsoid of this length, breadth and height over
/// the tragi: how a head's tapes stand to its size, to first order. Half an ellipse over the top each, and
/// all of one around (Ramanujan 1914; within a thousandth of a millimetre on a head).
[[nodiscard]] Eigen::Vector3d ellipse_tapes(const Eigen::Vector3d& size_mm);

}  // namespace scalpmark::geometry
