#pragma once

#include <Eigen/Core>
#include <array>
#include <optional>
#include <vector>

#include "geometry/head/head.h"

namespace scalpmark::geometry {

/// Four tapes to one place, in this order: from vertex, nasion, left tragus, right tragus. mm; empty where a
/// tape was not laid.
using FourTapes = std::array<std::optional<double>, 4>;

/// Skin that hangs together and fits some tapes.
struct FittingPatch {
  SurfacePoint best;
  double squares = 0;  ///< what the tapes miss it by there, squared and summed, in variances of a reading
  /// How far from `best`, straight, the mark may be if it is in this patch at all, 95 times of 100 or more,
  /// mm.
  double spread_mm = 0;
};

/// A place fits where its squares come to no more than this over the least on the head: five standard
/// deviations. Two places whose tapes differ by D standard deviations in all have squares that differ by a
/// normal error of mean D2 and deviation 2 D, so that the mark's own is left out with a chance of
/// Phi(-(this + D2) / 2 D): at most Phi(-5), 3 times in 10 million, where D is five.
inline constexpr double most_squares = 25;

/// Tapes that miss every place by more were read wrongly or belong to two marks: of honest ones, 11 of 10 000
/// threes and 3 of 10 000 pairs at the most (chi squared; fewer, as the best place is fitted to them).
inline constexpr double most_squares_at_best = 16;

/// How far every vertex of a head's skin is from the four points that tapes are laid from, kept for looking
/// up what fits. Between the corners of a triangle distances count as linear.
class FittingSkin {
public:
  /// Distances along the skin at its vertices, mm, in the order of FourTapes.
  FittingSkin(const Head& head, const std::array<const std::vector<double>*, 4>& from_mm);

  /// The four distances of a skin point.
  [[nodiscard]] std::array<double, 4> tapes_to(const SurfacePoint& p) const;
  /// All skin off the face (face_region.h) that fits, the best first; every tape with the standard deviation
  /// `reading_mm`. No place is missed: the whole head is looked through.
  [[nodiscard]] std::vector<FittingPatch> patches(const FourTapes& tapes, double reading_mm) const;

private:
  /// The least and the largest distances in some triangles that follow each other.
  struct Block {
    Eigen::Vector4d low, high;
  };
  class Search;

  Head head_;
  std::vector<Eigen::Vector4d> from_mm_;
  std::vector<Block> blocks_;
};

}  // namespace scalpmark::geometry
