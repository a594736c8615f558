#pragma once

#include <Eigen/Core>
#include <optional>

#include "geometry/head/head.h"

namespace scalpmark::geometry {

/// What staff measured, mm; any of the three may be missing.
struct MeasuredTapes {
  std::optional<double> nasion_inion_mm, tragus_tragus_mm, circumference_mm;

  friend bool operator==(const MeasuredTapes&, const MeasuredTapes&) = default;
};

struct ScaledHead {
  Head head;
  Eigen::Vector3d factors = Eigen::Vector3d::Ones();  ///< of the cranium, along right, front, up
};

/// Scales a head along its own axes, face and ears keeping their proportions (stretch.h), until its tapes
/// equal those measured, within 0.1 mm (Newton on the real tapes). An axis no measure speaks for follows the
/// others. Refuses (GeometryError): a measure outside the accepted range (nasion-inion and tragus-tragus 280
/// to 440, circumference 460 to 660), naming it and the range; proportions further than 30 % from this
/// head's, or tapes no scaling reaches, naming the two measures that disagree.
[[nodiscard]] ScaledHead scale_to_tapes(const Head& head, const MeasuredTapes& measured);

}  // namespace scalpmark::geometry
