#include "viewer/window/frame/status_line.h"

#include <QCoreApplication>
#include <cmath>

#include "geometry/paths/shortest_path.h"
#include "viewer/words/numbers.h"

namespace scalpmark::window {

namespace {

// What lupdate finds these texts under.
class StatusLine {
  Q_DECLARE_TR_FUNCTIONS(StatusLine)
};

QString in_words(double mm) {
  return QString::fromStdString(viewer::small_length(mm));
}

}  // namespace

double pulse_from_site_mm(const geometry::Surface& skin, const geometry::Plan& plan,
                          const geometry::Placement& placement) {
  if (placement.pulse == plan.treatment.pulse) return plan.treatment.wanted_to_pulse_mm;
  return geometry::shortest_distances(skin, skin.closest(plan.treatment.wanted),
                                      {skin.closest(placement.pulse)})[0];
}

std::optional<double> mark_under_edge_mm(const geometry::Placement& placement, geometry::MarkRule rule) {
  switch (rule) {
    case geometry::MarkRule::drop:
      return placement.drop_gap_mm;
    case geometry::MarkRule::nearest:
      return placement.nearest_gap_mm;
    case geometry::MarkRule::tape:
      break;
  }
  if (!placement.edge_mark.tape) return {};
  return (placement.edge - *placement.edge_mark.tape).norm();
}

QString status_line(double from_site_mm, const geometry::Placement& placement, geometry::MarkRule rule) {
  const QString name = rule == geometry::MarkRule::tape   ? StatusLine::tr("tape rule")
                       : rule == geometry::MarkRule::drop ? StatusLine::tr("drop rule")
                                                          : StatusLine::tr("nearest rule");
  const auto gap = mark_under_edge_mm(placement, rule);
  const QString mark = gap ? StatusLine::tr("edge mark: %1, %2 under the edge").arg(name, in_words(*gap))
                           : StatusLine::tr("edge mark: %1, falls off the head").arg(name);
  return StatusLine::tr("pulse %1 from site  |  coil %2\u00b0 to midline  |  %3")
      .arg(in_words(from_site_mm))
      .arg(std::lround(placement.angle_deg))
      .arg(mark);
}

}  // namespace scalpmark::window
