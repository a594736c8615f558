#pragma once

#include <optional>

#include "geometry/base/message.h"
#include "geometry/hands/check.h"
#include "geometry/hands/find_by_tapes.h"

namespace scalpmark::geometry {

/// A visit's two marks as their tapes find them, and the coil laid by them. Worked out anew whenever it is
/// asked for.
struct VisitCheck {
  std::optional<FoundMark> site, edge;  ///< empty for a mark that was not measured
  std::optional<Check> check;           ///< empty where a mark is not known or no coil fits both
  Message problem;                      ///< why a mark that was measured is not known, or why no coil fits
  /// Whether both marks are known well enough to be counted (FoundMark::is_sure) and a coil fits them.
  [[nodiscard]] bool is_sure() const { return check && site && site->is_sure() && edge && edge->is_sure(); }
};

/// Finds the marks of a visit by find_by_tapes() and lays the coil by them (check_marks). Where tapes fit
/// several places, the one nearest to the plan's own mark is taken, and said (FoundMark::nearest_to_plan):
/// over a course of visits a mark creeps by millimetres, while a mirror image lies centimetres away. What the
/// two refuse is `problem`.
[[nodiscard]] VisitCheck check_visit(const TapeFinder& finder, const Head& head, const Case& the_case,
                                     const Plan& plan, const Visit& visit, const CheckLimits& limits = {});

}  // namespace scalpmark::geometry
