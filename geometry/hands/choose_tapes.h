#pragma once

#include <cstddef>
#include <vector>

#include "geometry/hands/find_by_tapes.h"
#include "geometry/head/head.h"

namespace scalpmark::geometry {

/// The two or three tapes by which a mark is found again best on this head.
struct ChosenTapes {
  bool vertex = false, nasion = false, left_tragus = false, right_tragus = false;
  double spread_mm = 0;    ///< of the mark found by them, as FoundPlace says it
  std::size_t places = 1;  ///< that fit them; more than one where no two or three tapes tell them apart
};

/// For each mark, of all pairs and triples of tapes: those that fit the fewest places, and of these the ones
/// with the least spread (as find_by_tapes predicts it from distances without error). A third tape must make
/// it a tenth smaller, or two do; a tape of less than 1 mm is none. Works with rough_distances, so that
/// nobody waits for the head's fields: spreads within a few hundredths of those by the fields.
[[nodiscard]] std::vector<ChosenTapes> choose_tapes(const Head& head, const std::vector<SurfacePoint>& marks,
                                                    const FindOptions& options = {});

}  // namespace scalpmark::geometry
