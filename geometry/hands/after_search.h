#pragma once

#include "geometry/plan/plan.h"

namespace scalpmark::geometry {

/// What the search by twitch leaves of a start that was marked wrongly. The grid is drawn around that start;
/// of its nine spots the one nearest to where the hotspot really is answers, and the site is measured from
/// there.
struct AfterSearch {
  int row = 0, column = 0;  ///< the spot that answers, of the grid as it was drawn
  double left_mm = 0;       ///< from its pulse to the hotspot's, straight: what the site is off by
};
/// To first order: the plan's grid is carried along as it is, by the way from the plan's start to `start`.
/// Assumes that the twitch tells the nearest spot without error.
[[nodiscard]] AfterSearch after_search(const Plan& plan, const Placement& start);

}  // namespace scalpmark::geometry
