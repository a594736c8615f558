#pragma once

#include <optional>

#include "geometry/head/head.h"
#include "geometry/plan/plan.h"

namespace scalpmark::geometry {

/// What a tape read from a lost mark's note, along the skin, mm; any two or more of the four.
struct TapeReadings {
  std::optional<double> vertex_mm, nasion_mm, left_tragus_mm, right_tragus_mm;
};

/// A skin point found again.
struct FoundByTapes {
  SurfacePoint point;
  double worst_mm = 0;  ///< the most by which one of the tapes misses it
};

/// The skin point at these tape distances, for a mark whose cap is lost: where the circles drawn with the
/// tapes meet, least squares of the distances where they do not quite. Exact to 0.1 mm for distances without
/// error. Places on the face do not count. Where the tapes meet at two places (two tapes usually do, left and
/// right or front and back), the one nearer to `near` is taken. Refuses (GeometryError): fewer than two
/// readings; a reading that is not a number above 0, naming it; tapes that miss each other by more than 5 mm;
/// tapes that meet at two places when `near` is not given.
[[nodiscard]] FoundByTapes find_by_tapes(const Head& head, const TapeReadings& readings,
                                         const SurfacePoint* near = nullptr);

}  // namespace scalpmark::geometry
