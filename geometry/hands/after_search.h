#pragma once

#include <Eigen/Core>

#include "geometry/head/head.h"
#include "geometry/plan/case.h"
#include "geometry/plan/plan.h"

namespace scalpmark::geometry {

/// What the search by twitch leaves of a start that was marked wrongly. The grid is drawn around that start;
/// of its nine spots the one nearest to where the hotspot really is answers, and the site is measured from
/// there.
struct AfterSearch {
  int row = 0, column = 0;  ///< the spot that answers, of the grid as it was drawn
  double left_mm = 0;       ///< from its pulse to the hotspot's, straight: what the site is off by
  Eigen::Vector3d hotspot = Eigen::Vector3d::Zero();  ///< its pulse, near the skin
};
/// To first order: the plan's grid is carried along as it is, by the way from the plan's start to `start`.
/// Assumes that the twitch tells the nearest spot without error.
[[nodiscard]] AfterSearch after_search(const Plan& plan, const Placement& start);

/// The treatment site measured from what the search by twitch found, beside the one measured from the spot
/// that would answer if the start were right: how much of a wrong start the search takes back.
struct SiteAfterSearch {
  AfterSearch search;
  Placement site;          ///< the coil laid there
  bool same_spot = false;  ///< that answers as with a right start: nothing is taken back
  /// Of the site's wanted point from the plan's, forward and outward, straight, mm: measured from what the
  /// search finds, and from the spot of the same place in the grid.
  Eigen::Vector2d off_mm{0, 0}, unsearched_mm{0, 0};
};
/// Refuses (GeometryError) a case whose site is a landmark, which no search moves, and what lay_treatment()
/// refuses.
[[nodiscard]] SiteAfterSearch site_after_search(const Head& head, const Case& the_case, const Plan& plan,
                                                const Placement& start);

}  // namespace scalpmark::geometry
