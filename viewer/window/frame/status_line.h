#pragma once

#include <QString>
#include <optional>

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

/// "pulse 0.0 mm from site | coil 45 degrees to midline | edge mark: tape rule, 14.7 mm under the edge".
[[nodiscard]] QString status_line(double from_site_mm, const geometry::Placement& placement,
                                  geometry::MarkRule rule);

}  // namespace scalpmark::window
