#pragma once

#include <Eigen/Core>
#include <cstddef>
#include <functional>
#include <optional>
#include <vector>

#include "geometry/answers/control_chart.h"
#include "geometry/answers/drift.h"
#include "geometry/hands/visit_check.h"
#include "geometry/plan/visit.h"

namespace scalpmark::geometry {

/// Where a visit's coil put the pulse, seen from the plan's treatment site, and its angle from the case's.
struct VisitOffset {
  double pulse_off_mm = 0;  ///< along the skin
  double forward_mm = 0, toward_midline_mm = 0;
  double angle_off_deg = 0;  ///< toward the midline is positive
};

/// None where the visit's marks are not known well enough to be counted.
[[nodiscard]] std::optional<VisitOffset> offset_of(const VisitCheck& check);

/// The limits of a stretch of visits come from its first so many, or from all while there are fewer: later
/// ones are what is watched. Ours, no source.
inline constexpr std::size_t visits_for_limits = 10;

/// Visits that were made with the same marks.
struct CourseStretch {
  std::size_t first = 0, count = 0;   ///< of all visits
  std::vector<std::size_t> measured;  ///< those of them whose marks are known
  /// Of pulse_off_mm and angle_off_deg, over `measured` and numbered in it; none with fewer than two. A
  /// distance is outside above its high limit alone.
  std::optional<ControlLimits> distance, angle;
  std::optional<Drift> place_drift;  ///< forward and toward the midline; visits counted in `measured`
  std::optional<Drift> angle_drift;  ///< its first axis
};

/// A course of visits.
struct Course {
  std::vector<std::optional<VisitOffset>> offsets;  ///< one a visit
  std::vector<CourseStretch> stretches;  ///< the first visit begins one, and each that was marked anew
  std::vector<bool> outside;             ///< one a visit: beyond a limit of its stretch
};

/// Stretches, limits and drift of visits with these offsets; `marked_anew` has one for each. Refuses
/// (GeometryError) as control_limits() and find_drift() do.
[[nodiscard]] Course course_of(std::vector<std::optional<VisitOffset>> offsets,
                               const std::vector<bool>& marked_anew);

/// All visits of a case with what their marks make of the plan.
struct CheckedCourse {
  std::vector<VisitCheck> checks;  ///< one a visit
  Course course;
};

/// Checks each visit of the case against the plan. `finder` is the head's; `between` is called before each
/// visit, and what it throws ends the work.
[[nodiscard]] CheckedCourse check_course(const TapeFinder& finder, const Head& head, const Case& the_case,
                                         const Plan& plan, const std::function<void()>& between = {});

/// Outlines on the skin, closed, of the ellipses that would hold 50 and 95 of 100 pulses like these visits'.
struct CourseEllipses {
  std::vector<Eigen::Vector3d> half, most;
};

/// From the visits' mean and covariance, taken as normal (scatter.h); with few visits they are rough. None
/// with fewer than three.
[[nodiscard]] std::optional<CourseEllipses> course_ellipses(const Head& head, const Plan& plan,
                                                            const CourseStretch& stretch,
                                                            const Course& course);

}  // namespace scalpmark::geometry
