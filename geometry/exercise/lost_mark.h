#pragma once

#include <Eigen/Core>
#include <array>
#include <optional>

#include "geometry/exercise/right_answers.h"

namespace scalpmark::geometry {

/// The points that a lost mark's tapes were measured from: vertex, nasion, left and right tragus.
using TapeEnds = std::array<SurfacePoint, 4>;

/// The mark that lies there, with its tapes: each the shortest path.
[[nodiscard]] LostMark lost_mark(const Surface& skin, const TapeEnds& ends, const SurfacePoint& at);

/// Where a mark with these tapes would be looked for from other ends: where the squares of what the four
/// tapes miss it by are least together, near where it was. For ends some millimetres off.
[[nodiscard]] SurfacePoint looked_for(const Surface& skin, const LostMark& mark, const TapeEnds& ends);

}  // namespace scalpmark::geometry
