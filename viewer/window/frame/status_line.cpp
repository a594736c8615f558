#include "viewer/window/frame/status_line.h"

#include <QCoreApplication>

#include "geometry/paths/shortest_path.h"
#include "viewer/words/numbers.h"

namespace scalpmark::window {

namespace {

// What lupdate finds these texts under.
class StatusLine {
  Q_DECLARE_TR_FUNCTIONS(StatusLine)
};

QString gap_text(double mm) {
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

QString status_line(const std::optional<double>& from_site_mm, const std::string& where,
                    const geometry::Placement& placement, geometry::MarkRule rule) {
  const QString name = rule == geometry::MarkRule::tape   ? StatusLine::tr("tape rule")
                       : rule == geometry::MarkRule::drop ? StatusLine::tr("drop rule")
                                                          : StatusLine::tr("nearest rule");
  const auto gap = mark_under_edge_mm(placement, rule);
  const QString mark = gap ? StatusLine::tr("edge mark: %1, edge %2 above it").arg(name, gap_text(*gap))
                           : StatusLine::tr("edge mark: %1, falls off the head").arg(name);
  const QString pulse = from_site_mm
                            ? StatusLine::tr("pulse %1 from the site").arg(gap_text(*from_site_mm))
                            : StatusLine::tr("coil %1", "where it lies").arg(QString::fromStdString(where));
  return StatusLine::tr("%1  |  coil %2  |  %3")
      .arg(pulse, QString::fromStdString(viewer::coil_angle(placement.angle_deg)), mark);
}

}  // namespace scalpmark::window
