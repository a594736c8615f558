#include "viewer/window/steps/gap_panel.h"

#include <QVBoxLayout>
#include <cmath>

#include "viewer/words/contact_text.h"
#include "viewer/words/numbers.h"

namespace scalpmark::window {

using geometry::Region;

namespace {

constexpr double least_clear_mm = 0.5;

QString region_name(Region region) {
  switch (region) {
    case Region::scalp:
      return GapPanel::tr("the scalp");
    case Region::left_ear:
      return GapPanel::tr("the left ear");
    case Region::right_ear:
      return GapPanel::tr("the right ear");
    case Region::face:
      break;
  }
  return GapPanel::tr("the brow or face");
}

QString contact_gap_text(double mm) {
  return QString::fromStdString(viewer::small_length(mm));
}

/// How it touches the head: a cap's thickness keeps all of it off, its centre no more than the rest.
QString rests(const geometry::Contact& c) {
  if (geometry::on_wings(c))
    return GapPanel::tr("Rests on its wings, centre %1 clear.").arg(contact_gap_text(c.lift_mm));
  if (c.touches.empty()) return GapPanel::tr("Centre %1 clear.").arg(contact_gap_text(c.lift_mm));
  const QString where = QString::fromStdString(viewer::place_under_coil(c.touches.front().under));
  const double cap_mm = c.lift_mm - c.resting_lift_mm;
  QString touches =
      cap_mm < least_clear_mm
          ? GapPanel::tr("Touches %1.").arg(where)
          : GapPanel::tr("Rests on cap and hair (%2 thick) %1.").arg(where, contact_gap_text(cap_mm));
  if (geometry::on_centre(c)) return touches;
  return touches + QStringLiteral(" ") + GapPanel::tr("Centre %1 clear.").arg(contact_gap_text(c.lift_mm));
}

}  // namespace

QString contact_line(const geometry::Contact& c) {
  QString text = rests(c);
  for (const geometry::WingGap& w : c.wings) {
    const QString name = w.wing == geometry::Wing::left    ? GapPanel::tr("Left wing")
                         : w.wing == geometry::Wing::right ? GapPanel::tr("Right wing")
                                                           : GapPanel::tr("Gap");
    const QString middle = w.centre_mm && c.wings.size() > 1
                               ? GapPanel::tr(", %1 under its middle").arg(contact_gap_text(*w.centre_mm))
                               : QString();
    text += QStringLiteral(" ") +
            GapPanel::tr("%1 %2 to %3%4.", "a wing, its smallest and largest gap, and its middle's")
                .arg(name, QString::fromStdString(viewer::small_number(w.least_mm)),
                     contact_gap_text(w.most_mm), middle);
  }
  if (c.hits.empty()) return text + QStringLiteral(" ") + GapPanel::tr("Clear of ears and brow.");
  for (const geometry::Obstacle& o : c.hits)
    text += QStringLiteral(" ") + GapPanel::tr("Hits %1.").arg(region_name(o.region));
  return text;
}

GapPanel::GapPanel(QWidget* parent) : QWidget(parent) {
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(0, 0, 0, 0);
  all->setSpacing(4);
  box_ = new QCheckBox(tr("Gap under the coil"));
  box_->setToolTip(tr("Colours the skin under the coil by the gap, where the coil lies or is held (Ctrl+G)"));
  box_->setAccessibleDescription(box_->toolTip());
  line_ = new QLabel;
  line_->setWordWrap(true);
  line_->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Minimum);  // never to be squeezed
  line_->setAccessibleName(tr("How the coil rests"));
  line_->setTextInteractionFlags(Qt::TextSelectableByMouse);
  line_->hide();
  all->addWidget(box_);
  all->addWidget(line_);
  connect(box_, &QCheckBox::clicked, this, &GapPanel::toggled);
}

void GapPanel::set_on(bool on) {
  box_->setChecked(on);
  if (!on) box_->setAccessibleDescription(box_->toolTip());
  line_->setVisible(on);
}

void GapPanel::show_contact(const CoilContact& contact) {
  if (contact.gaps())
    line_->setText(contact_line(contact.gaps()->contact));
  else
    line_->setText(contact.problem().isEmpty() ? tr("\u2026") : contact.problem());
  line_->setVisible(box_->isChecked());
  // Whoever cannot see the map hears it with the box.
  box_->setAccessibleDescription(box_->isChecked() ? line_->text() : box_->toolTip());
}

}  // namespace scalpmark::window
