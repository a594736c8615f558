#pragma once

#include "geometry/hands/tolerance.h"
#include "viewer/practise/class_results.h"
#include "viewer/sheet/page.h"

namespace scalpmark::viewer {

/// How far from the middle of the chart to its edge, mm on the skin: as far as the furthest pulse and 95 of
/// 100 trials by hand, in steps of 10, at least 20 and at most 60. A pulse further off is drawn at the edge.
[[nodiscard]] double chart_reach_mm(const std::vector<geometry::Score>& attempts,
                                    const geometry::Tolerance* hands);

/// Where each trainee's pulse goes around the aim, seen from close by: forward is up, away from the midline
/// is to the coil's side. Draws a square of that size on paper; returns its height with its words.
double draw_class_chart(Pages& pages, const ClassResults& results, const geometry::Tolerance* hands,
                        double x_mm, double y_mm, double size_mm);

}  // namespace scalpmark::viewer
