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

/// A place fits where its squares come to no more than this over the least on the head: four standard
/// deviations. Of two places that tapes tell apart by more, the mark's own is left out about 3 times in
/// 100 000; tapes that miss every place by more were read wrongly or belong to two marks.
inline constexpr double most_squares = 16;

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
