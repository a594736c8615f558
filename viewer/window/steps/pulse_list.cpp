#include "viewer/window/steps/pulse_list.h"

#include <QKeyEvent>
#include <algorithm>

#include "viewer/window/steps/pulse_panel.h"
#include "viewer/words/answer_words.h"
#include "viewer/words/words.h"

namespace scalpmark::window {

namespace {

constexpr int list_height_px = 118;

QString pulse_row(std::size_t number, const geometry::LoggedPulse& pulse) {
  const QString place = pulse.spot ? PulseList::tr("spot %1").arg(geometry::place_in_spiral(*pulse.spot) + 1)
                                   : PulseList::tr("site");
  const QString seen = viewer::translated(viewer::seen_name(pulse.answer));
  const QString time = pulse.at ? QString::fromStdString(iso(*pulse.at)) : QString();
  QString row = PulseList::tr("%1   %2, %3 %: %4   %5")
                    .arg(number)
                    .arg(place)
                    .arg(pulse.output_percent)
                    .arg(seen, time);
  if (!pulse.corrected_from) return row;
  return PulseList::tr("%1   corrected, first noted: %2")
      .arg(row, viewer::translated(viewer::seen_name(*pulse.corrected_from)));
}

}  // namespace

PulseList::PulseList(PulseLog& log, QWidget* parent) : QListWidget(parent), log_(log) {
  setObjectName("pulses");
  setAccessibleName(tr("Pulses of the visit"));
  setAccessibleDescription(tr("The keys 0 to 3 correct the answer of the chosen pulse"));
  setToolTip(accessibleDescription());
  setFixedHeight(list_height_px);
  setWordWrap(true);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setTabKeyNavigation(false);
}

void PulseList::show_log() {
  const geometry::Visit* visit = log_.visit();
  const auto count = visit ? static_cast<int>(visit->pulses.size()) : 0;
  const int was = this->count() == count ? currentRow() : -1;
  // Rows that say the same stay: a visit may have hundreds.
  while (this->count() > count) delete takeItem(0);
  while (this->count() < count) insertItem(0, QString());
  for (int row = 0; row < count; ++row) {
    const auto pulse = static_cast<std::size_t>(count - 1 - row);
    const QString text = pulse_row(pulse + 1, visit->pulses[pulse]);
    if (item(row)->text() != text) item(row)->setText(text);
  }
  if (was >= 0) setCurrentRow(was);
}

void PulseList::keyPressEvent(QKeyEvent* event) {
  const auto answer = PulsePanel::answer_for(event->key());
  const geometry::Visit* visit = log_.visit();
  if (answer && visit && currentRow() >= 0) {
    emit refused(log_.correct(visit->pulses.size() - 1 - static_cast<std::size_t>(currentRow()), *answer));
    return;
  }
  QListWidget::keyPressEvent(event);
}

}  // namespace scalpmark::window
