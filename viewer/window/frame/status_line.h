#pragma once

#include <QString>
#include <optional>
#include <string>

#include "geometry/plan/case.h"
#include "geometry/plan/plan.h"

namespace scalpmark::window {

/// How far along the skin a placement's pulse lies from the plan's treatment site, mm: from where the pulse
/// is wanted there, which the coil laid by the plan's own marks may miss.
[[nodiscard]] double pulse_from_site_mm(const geometry::Surface& skin, const geometry::Plan& plan,
                                        const geometry::Placement& placement);

/// How far under the coil's edge its mark lies, mm: for drop and nearest the gap, for tape the straight line
/// from edge to mark. Empty where the mark falls off the head.
[[nodiscard]] std::optional<double> mark_under_edge_mm(const geometry::Placement& placement,
                                                       geometry::MarkRule rule);

/// "pulse 0.0 mm from the site | 45 degrees to the midline | edge mark: tape rule, edge 14.7 mm above it".
/// How far from the site matters of a coil that lies on it or was moved; of others (on the start, a spot, the
/// hotspot) it is said where they lie, and `from_site_mm` is empty.
[[nodiscard]] QString status_line(const std::optional<double>& from_site_mm, const std::string& where,
                                  const geometry::Placement& placement, geometry::MarkRule rule);

}  // namespace scalpmark::window
