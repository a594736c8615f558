#include "viewer/window/practise/class_panel.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QStringList>
#include <algorithm>
#include <cmath>

#include "geometry/exercise/steadiness.h"
#include "viewer/window/practise/practise_card.h"
#include "viewer/words/exercise_words.h"
#include "viewer/words/numbers.h"
#include "viewer/words/words.h"

namespace scalpmark::window {

namespace {

/// The last attempt of each trainee.
std::vector<geometry::Score> last_of(const viewer::ClassResults& results) {
  std::vector<geometry::Score> scores;
  for (const auto& trainee : results.trainees)
    if (!trainee.attempts.empty()) scores.push_back(trainee.attempts.back());
  return scores;
}

QString number_text(double mm) {
  return QString::fromStdString(viewer::small_number(mm));
}

QString spread_text(const geometry::Quartiles& q) {
  return ClassPanel::tr("%1 to %2").arg(number_text(q.low), number_text(q.high));
}

}  // namespace

ClassPanel::ClassPanel(QWidget* parent) : QWidget(parent) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(8, 8, 8, 8);
  column->setSpacing(6);
  const PractiseCard card = practise_card(tr("Class"));
  heading_ = practise_text("large");
  pulse_ = practise_text("large");
  table_ = new QTableWidget(0, 4);
  table_->setAccessibleName(tr("The class by step"));
  table_->setEditTriggers(QAbstractItemView::NoEditTriggers);
  table_->setSelectionBehavior(QAbstractItemView::SelectRows);
  table_->setTabKeyNavigation(false);
  table_->verticalHeader()->hide();
  table_->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
  table_->horizontalHeader()->setSectionResizeMode(0, QHeaderView::Stretch);
  wrap_in_table(*table_);
  left_out_ = practise_text("problem");
  note_ = practise_text("quiet");
  note_->setText(viewer::translated(viewer::not_a_certificate()));
  card.rows->addWidget(heading_);
  card.rows->addWidget(pulse_);
  card.rows->addWidget(table_, 1);
  card.rows->addWidget(left_out_);
  card.rows->addWidget(note_);
  column->addWidget(card.frame, 1);
  auto* row = new QHBoxLayout;
  page_ = practise_button(tr("Class page\u2026"), tr("Save the class as one page of PDF"));
  page_->setObjectName("main");
  csv_ = practise_button(tr("Table\u2026"), tr("Save every step of every trainee as a table (CSV)"));
  done_ = practise_button(tr("Done"), tr("Back to choosing an exercise"));
  row->addWidget(page_, 1);
  row->addWidget(csv_);
  row->addWidget(done_);
  column->addLayout(row);
}

void ClassPanel::show_class(const viewer::ClassResults& results) {
  const std::vector<geometry::Score> scores = last_of(results);
  heading_->setText(tr("%1 results").arg(results.trainees.size()));
  std::vector<double> pulses;
  for (const geometry::Score& score : scores)
    if (score.pulse) pulses.push_back(score.pulse->off.mm);
  pulse_->setVisible(!pulses.empty());
  if (!pulses.empty()) {
    const geometry::Quartiles q = geometry::quartiles(pulses);
    pulse_->setText(tr("Pulse off by %1 in the middle of the class; half of it from %2 to %3.")
                        .arg(QString::fromStdString(viewer::small_length(q.median)),
                             QString::fromStdString(viewer::small_length(q.low)),
                             QString::fromStdString(viewer::small_length(q.high))));
  }
  const QString unit = QString::fromStdString(viewer::small_unit());
  table_->setHorizontalHeaderLabels({tr("Step"), in_two_lines(tr("Done by")),
                                     in_two_lines(tr("Own, %1").arg(unit)),
                                     in_two_lines(tr("Half of the class"))});
  const auto steps = geometry::class_steps(scores);
  table_->setRowCount(static_cast<int>(steps.size()));
  int row = 0;
  for (const geometry::ClassStep& step : steps) {
    const QStringList cells{viewer::translated(viewer::step_name(step.step)), QString::number(step.count),
                            step.count > 0 ? number_text(step.own_mm.median) : QString(),
                            step.count > 0 ? spread_text(step.own_mm) : QString()};
    for (int i = 0; i < cells.size(); ++i) {
      auto* item = new QTableWidgetItem(cells[i]);
      if (i > 0) item->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
      table_->setItem(row, i, item);
    }
    ++row;
  }
  QStringList out;
  for (const auto& sentence : results.left_out) out << viewer::translated(sentence);
  left_out_->setText(out.join(QLatin1Char('\n')));
  left_out_->setVisible(!out.isEmpty());
}

void ClassPanel::size_type(int window_height) {
  constexpr double share = 1.0 / 42;  // read from the back of a room, as the lesson's captions nearly are
  const int px = std::clamp(static_cast<int>(share * window_height), 17, 32);
  table_->setStyleSheet(QStringLiteral("QTableWidget, QHeaderView::section { font-size: %1px; }").arg(px));
}

}  // namespace scalpmark::window
