#include "geometry/hands/visit_check.h"

#include "geometry/base/error.h"

namespace scalpmark::geometry {

namespace {

std::optional<FoundMark> mark_at_visit(const TapeFinder& finder, const Head& head,
                                       const TapeReadings& readings, const Eigen::Vector3d& planned) {
  if (count_of(readings) < 2) return {};
  FoundMark mark = find_mark(finder, readings);
  if (!mark.taken) take_nearest(mark, head, head.skin().closest(planned));
  return mark;
}

}  // namespace

VisitCheck check_visit(const TapeFinder& finder, const Head& head, const Case& the_case, const Plan& plan,
                       const Visit& visit, const CheckLimits& limits) {
  VisitCheck found;
  const Placement& planned = plan.treatment;
  try {
    found.site = mark_at_visit(finder, head, visit.site_tape, planned.wanted);
    found.edge = mark_at_visit(finder, head, visit.edge_tape, planned.mark.value_or(planned.edge));
    if (found.site && found.edge)
      found.check =
          check_marks(head, the_case, plan, found.site->places[*found.site->taken].point,
                      found.edge->places[*found.edge->taken].point, limits, TapeDistances::left_out);
  } catch (const GeometryError& error) {
    found.problem = error.message();
  }
  return found;
}

}  // namespace scalpmark::geometry
