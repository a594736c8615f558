#pragma once

#include <Eigen/Core>
#include <optional>

#include "geometry/hands/cap.h"

namespace scalpmark::geometry {

/// What was read off the cap on the patient today.
struct BrimReadings {
  BrimHeights heights;             ///< two or more of the four
  std::optional<double> arrow_mm;  ///< arrow_beside_nasion_mm: to the patient's right

  friend bool operator==(const BrimReadings&, const BrimReadings&) = default;
};

/// How surely readings are taken.
struct SlipErrors {
  /// Of one reading, one standard deviation, mm: a tape is read to the half centimetre (common practice, no
  /// source), so 5 / sqrt(12).
  double reading_mm = 1.4;
  /// What a slip may be that the readings do not show, one standard deviation each way. Ours, no source:
  /// 10 degrees slide a cap by a centimetre and a half, which nobody needs a tape to see.
  double unseen_deg = 10;
};

/// A slip found from readings.
struct FoundSlip {
  CapSlip slip;
  CapSlip sd;  ///< of each part, one standard deviation
  /// Of forward_deg, side_deg, turn_deg, degrees squared.
  Eigen::Matrix3d covariance = Eigen::Matrix3d::Zero();
  /// Whether the readings say anything of the part worth having: it is known to better than half of what it
  /// might be unseen. A part that is not said is (nearly) 0 in `slip`.
  bool forward_said = false, side_said = false, turn_said = false;
  double worst_mm = 0;  ///< the most by which a reading misses the cap so slipped
};

/// The slip for which a cap's brim and arrow are where they were read today: least squares (Gauss-Newton),
/// each reading weighing the same, and of all slips that fit alike the smallest.
///
/// What heights can say. Nasion and inion see forward (opposite ways), the tragi see to a side (opposite
/// ways). So nasion and inion alone say nothing of the side, the two tragi alone nothing of forward; one of
/// each pair says both. A turn leaves all four heights as they are on a round head and nearly so on any: it
/// is said by the arrow. The arrow goes with the side as well, so it needs a tragus beside it. Directions
/// that the readings see less surely than `unseen_deg` are left out of the fit, and stand in the covariance
/// with that.
///
/// Refuses (GeometryError): fewer than two heights; a height that is not from 0 to 200 mm, an arrow more than
/// 60 mm beside, naming it; readings that miss every slip by more than 10 mm.
[[nodiscard]] FoundSlip find_slip(const Head& head, const Cap& cap, const BrimReadings& today,
                                  const SlipErrors& errors = {});

}  // namespace scalpmark::geometry
