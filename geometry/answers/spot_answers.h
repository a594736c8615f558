#pragma once

#include <Eigen/Core>
#include <vector>

namespace scalpmark::geometry {

/// What was counted at a spot, all pulses at one output.
struct SpotAnswers {
  Eigen::Vector2d at_mm =
      Eigen::Vector2d::Zero();  ///< of its real pulse point from the start: forward, outward
  int pulses = 0;
  int answers = 0;
};

/// Refuses (GeometryError) more answers than pulses, fewer than none of either, over 1000 pulses at a spot,
/// over 100 spots, and a place that is no number; names the spot by its number.
void check_spots(const std::vector<SpotAnswers>& spots);

}  // namespace scalpmark::geometry
