#include "viewer/window/practise/score_panel.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QSignalBlocker>
#include <cmath>

#include "models/exercises/result_file.h"
#include "viewer/window/practise/practise_card.h"
#include "viewer/words/exercise_words.h"
#include "viewer/words/numbers.h"
#include "viewer/words/words.h"

namespace scalpmark::window {

namespace {

/// "6.2", with "3°" behind it where an angle is meant.
QString size_of(const geometry::Offset& offset) {
  QString text = QString::fromStdString(viewer::small_number(std::abs(offset.mm)));
  if (offset.angle_deg)
    text += QStringLiteral(", ") + QString::fromStdString(viewer::in_degrees(std::abs(*offset.angle_deg)));
  return text;
}

}  // namespace

ScorePanel::ScorePanel(ExerciseRun& run, QWidget* parent) : QWidget(parent), run_(run) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(8, 8, 8, 8);
  column->setSpacing(6);
  const PractiseCard score = practise_card(tr("Score"));
  pulse_ = practise_text("larger");
  habit_ = practise_text("strong");
  steady_ = practise_text();
  for (QLabel* label : {pulse_, habit_, steady_}) score.rows->addWidget(label);
  column->addWidget(score.frame);

  const PractiseCard steps = practise_card(tr("Step by step"));
  table_ = new QTableWidget(0, 3);
  table_->setAccessibleName(tr("Score by step"));
  table_->setSelectionBehavior(QAbstractItemView::SelectRows);
  table_->setSelectionMode(QAbstractItemView::SingleSelection);
  table_->setEditTriggers(QAbstractItemView::NoEditTriggers);
  table_->setTabKeyNavigation(false);
  table_->verticalHeader()->hide();
  table_->horizontalHeader()->setSectionResizeMode(0, QHeaderView::Stretch);
  for (const int column_at : {1, 2})
    table_->horizontalHeader()->setSectionResizeMode(column_at, QHeaderView::ResizeToContents);
  wrap_in_table(*table_);
  table_->setMinimumHeight(220);
  step_ = practise_text();
  trained_ = practise_text("quiet");
  auto* row = new QHBoxLayout;
  previous_ = practise_button(tr("Previous"), tr("The step before, on the stage"));
  next_ = practise_button(tr("Next"), tr("The next step, on the stage"));
  row->addWidget(previous_);
  row->addWidget(next_);
  row->addStretch(1);
  steps.rows->addWidget(table_, 1);
  steps.rows->addLayout(row);
  steps.rows->addWidget(step_);
  steps.rows->addWidget(trained_);
  column->addWidget(steps.frame, 1);

  auto* keep = new QHBoxLayout;
  initials_ = new QLineEdit;
  initials_->setMaxLength(static_cast<int>(models::longest_trainee));
  initials_->setPlaceholderText(tr("Initials, if you like"));
  initials_->setAccessibleName(tr("Initials"));
  initials_->setToolTip(
      tr("Stand in the result's file and in the table of the class; without them nobody is named"));
  save_ =
      practise_button(tr("Save the result\u2026"), tr("All tries, for the trainer to put a class together"));
  keep->addWidget(initials_, 1);
  keep->addWidget(save_);
  column->addLayout(keep);
  auto* on = new QHBoxLayout;
  again_ = practise_button(tr("Again, same head"), tr("Another try on the same head: is the hand steady?"));
  other_ = practise_button(tr("Other exercise"), tr("Back to choosing an exercise"));
  on->addWidget(again_, 1);
  on->addWidget(other_);
  column->addLayout(on);
  auto* note = practise_text("quiet");
  note->setText(viewer::translated(viewer::not_a_certificate()));
  column->addWidget(note);

  connect(table_, &QTableWidget::currentCellChanged, this, [this](int row_now) {
    if (row_now < 0) return;
    const auto steps_in_score = static_cast<int>(score_count());
    show_step(row_now < steps_in_score ? std::optional(static_cast<std::size_t>(row_now)) : std::nullopt);
  });
  connect(previous_, &QPushButton::clicked, this, [this] { step_by(-1); });
  connect(next_, &QPushButton::clicked, this, [this] { step_by(1); });
}

std::size_t ScorePanel::score_count() const {
  return run_.scores().empty() ? 0 : score().steps.size();
}

void ScorePanel::fill_table() {
  const QSignalBlocker quiet(table_);
  const QString unit = QString::fromStdString(viewer::small_unit());
  table_->setHorizontalHeaderLabels(
      {tr("Step"), in_two_lines(tr("Own, %1").arg(unit)), in_two_lines(tr("Carried, %1").arg(unit))});
  table_->horizontalHeaderItem(1)->setToolTip(
      tr("One's own error: from where the step should be, given what came before"));
  table_->horizontalHeaderItem(2)->setToolTip(tr("Error carried over: what earlier steps had done to it"));
  const auto& steps = score().steps;
  table_->setRowCount(static_cast<int>(steps.size()) + (score().pulse ? 1 : 0));
  const auto put = [this](int row, int column, const QString& text) {
    auto* item = new QTableWidgetItem(text);
    if (column > 0) item->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
    table_->setItem(row, column, item);
  };
  int row = 0;
  for (const geometry::StepScore& each : steps) {
    put(row, 0, viewer::translated(viewer::step_name(each.step)));
    put(row, 1, each.placed ? size_of(each.own) : tr("not done"));
    put(row, 2,
        each.placed ? QString::fromStdString(viewer::small_number(std::abs(each.carried.mm))) : QString());
    ++row;
  }
  if (score().pulse) {
    put(row, 0, tr("pulse at the end"));
    put(row, 1, size_of(score().pulse->off));
    put(row, 2, {});
  }
}

void ScorePanel::show_score() {
  if (run_.scores().empty()) return;
  fill_table();
  habit_->setText(viewer::translated(viewer::habit_to_mend(run_.answers(), score())));
  const bool repeated = run_.scores().size() > 1;
  steady_->setVisible(repeated);
  if (repeated)
    steady_->setText(viewer::translated(viewer::steadiness_sentence(geometry::steadiness(run_.scores()))));
  const auto left = run_.tries_left();
  again_->setEnabled(run_.may_try_again());
  again_->setText(left ? tr("Again, same head (%1 left)").arg(*left) : tr("Again, same head"));
  show_step(score().worst ? score().worst : score().pulse ? std::nullopt : std::optional<std::size_t>(0));
}

void ScorePanel::show_hands(std::shared_ptr<const geometry::Tolerance> hands) {
  hands_ = std::move(hands);
  if (!run_.scores().empty()) show_text();
}

void ScorePanel::show_step(std::optional<std::size_t> index) {
  shown_ = index;
  {
    const QSignalBlocker quiet(table_);
    table_->setCurrentCell(static_cast<int>(index.value_or(score().steps.size())), 0);
    table_->scrollTo(table_->currentIndex());
  }
  show_text();
  emit step_shown();
}

void ScorePanel::step_by(int by) {
  const int rows = table_->rowCount();
  if (rows == 0) return;
  table_->setCurrentCell((table_->currentRow() + by + rows) % rows, 0);
}

void ScorePanel::show_text() {
  pulse_->setVisible(score().pulse.has_value());
  if (score().pulse)
    pulse_->setText(viewer::translated(viewer::pulse_sentence(*score().pulse, hands_.get())));
  if (!shown_ || *shown_ >= score().steps.size()) {
    step_->setText(hands_ ? viewer::translated(viewer::hands_sentence(*hands_)) : QString());
    trained_->setText(viewer::translated(viewer::trained_pulse()));
    return;
  }
  const geometry::StepScore& each = score().steps[*shown_];
  QStringList lines;
  if (!each.placed) {
    lines << tr("Not done.");
  } else {
    lines << tr("Own error: %1").arg(viewer::translated(viewer::offset_in_words(each.step, each.own)));
    constexpr double worth_saying_mm = 0.5;
    if (std::abs(each.carried.mm) >= worth_saying_mm) {
      lines
          << tr("Carried over: %1").arg(viewer::translated(viewer::offset_in_words(each.step, each.carried)));
      lines << tr("Together: %1").arg(viewer::translated(viewer::offset_in_words(each.step, each.off)));
    }
    if (each.misread_mm && std::abs(*each.misread_mm) >= worth_saying_mm)
      lines << tr("Of it misread: %1")
                   .arg(QString::fromStdString(viewer::small_length(std::abs(*each.misread_mm))));
  }
  step_->setText(lines.join(QLatin1Char('\n')));
  const auto trained = viewer::trained_people(each.step);
  trained_->setVisible(trained.has_value());
  if (trained) trained_->setText(viewer::translated(*trained));
}

QString ScorePanel::said() const {
  QStringList all;
  for (const QLabel* label : {pulse_, habit_, steady_, step_, trained_}) all << label->text();
  return all.join(QLatin1Char('\n'));
}

}  // namespace scalpmark::window
