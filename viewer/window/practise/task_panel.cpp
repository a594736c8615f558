#include "viewer/window/practise/task_panel.h"

#include <QGridLayout>
#include <QHBoxLayout>
#include <QSignalBlocker>

#include "geometry/base/ranges.h"
#include "viewer/window/practise/practise_card.h"
#include "viewer/words/answer_words.h"
#include "viewer/words/exercise_words.h"
#include "viewer/words/words.h"

namespace scalpmark::window {

using geometry::Task;

namespace {

constexpr geometry::Range reading_mm{geometry::ranges::nasion_inion_mm.low,
                                     geometry::ranges::circumference_mm.high};

/// How the tool in the hand is used, in a sentence.
QString how_to(Tool tool) {
  switch (tool) {
    case Tool::none:
      return TaskPanel::tr("Take a tool. A drag turns the head, the wheel brings it nearer.");
    case Tool::finger:
      return TaskPanel::tr(
          "Press on the skin: the mark under the finger grows darker over a bump or hollow of "
          "the bone.");
    case Tool::tape:
      return TaskPanel::tr(
          "Pull from one place to another; take the end up again to pull on. The right button "
          "(H) holds the tape where it is. Read it off its print.");
    case Tool::point:
    case Tool::line:
      return TaskPanel::tr("Points and lines are your own help. What is asked for is marked with a cross.");
    case Tool::cross:
      return TaskPanel::tr("A cross is the answer to the step; another one takes its place.");
    case Tool::coil:
      return TaskPanel::tr(
          "Carry the coil by its handle, turn it by its wings. Look along its edge as you would "
          "at the chair.");
  }
  return {};
}

}  // namespace

TaskPanel::TaskPanel(ExerciseRun& run, PractiseHand& hand, QWidget* parent)
    : QWidget(parent), run_(run), hand_(hand) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(8, 8, 8, 8);
  column->setSpacing(6);
  column->addWidget(build_task());
  column->addWidget(build_tools());
  column->addWidget(build_way_on());
  column->addStretch(1);
  connect(&run_, &ExerciseRun::changed, this, &TaskPanel::show_run);
  connect(&run_, &ExerciseRun::step_changed, this, &TaskPanel::show_run);
  connect(&run_, &ExerciseRun::ticked, this, &TaskPanel::show_clock);
  connect(&hand_, &PractiseHand::tool_changed, this, &TaskPanel::show_tools);
}

QWidget* TaskPanel::build_task() {
  const PractiseCard card = practise_card(tr("Task"));
  auto* row = new QHBoxLayout;
  progress_ = practise_text("strong");
  clock_ = new QLabel;
  clock_->setObjectName("strong");
  clock_->setAccessibleName(tr("Time left"));
  row->addWidget(progress_, 1);
  row->addWidget(clock_);
  order_ = practise_text("larger");
  steps_ = new QListWidget;
  steps_->setObjectName("pulses");
  steps_->setAccessibleName(tr("Steps of the task"));
  steps_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  card.rows->addLayout(row);
  card.rows->addWidget(order_);
  card.rows->addWidget(steps_);
  for (const geometry::Step& step : geometry::steps_of(Task::three_tapes)) {
    auto* field = new LengthField(viewer::translated(viewer::step_name(step)), reading_mm);
    field->set_optional(tr("read off"));
    field->on_commit([this, step](std::optional<double> mm) { return run_.type_reading(step, mm); });
    readings_[static_cast<std::size_t>(step.which)] = field;
    card.rows->addWidget(field);
  }
  connect(steps_, &QListWidget::currentRowChanged, this, [this](int index) {
    if (index >= 0 && run_.is_on()) run_.go_to_step({run_.task(), index});
  });
  return card.frame;
}

QWidget* TaskPanel::build_tools() {
  const PractiseCard card = practise_card(tr("In the hand"));
  auto* grid = new QGridLayout;
  grid->setSpacing(4);
  int place = 0;
  const auto add = [&](Tool tool, const QString& name, const QString& tooltip) {
    QPushButton* button = practise_button(name, tooltip);
    button->setCheckable(true);
    tools_[tool] = button;
    grid->addWidget(button, place / 3, place % 3);
    ++place;
    connect(button, &QPushButton::clicked, this, [this, tool] {
      hand_.take(hand_.tool() == tool ? Tool::none : tool);
      show_tools();
    });
  };
  add(Tool::finger, tr("Finger"), tr("Feel for the bone (F)"));
  add(Tool::tape, tr("Tape"), tr("Pull the tape over the head (T)"));
  add(Tool::coil, tr("Coil"), tr("Lay the coil on the head (C)"));
  add(Tool::point, tr("Point"), tr("A point in pencil, for your own help (P)"));
  add(Tool::line, tr("Line"), tr("A short line in pencil, for your own help (L)"));
  add(Tool::cross, tr("Cross"), tr("A cross in pencil: the answer (X)"));
  card.rows->addLayout(grid);
  how_ = practise_text("quiet");
  card.rows->addWidget(how_);
  auto* row = new QGridLayout;
  row->setSpacing(4);
  hold_ = practise_button(tr("Hold it here"),
                          tr("A finger holds the tape where its end is; pull on from there (H)"));
  close_ = practise_button(tr("Close it"), tr("Back to the tape's zero, around the head (O)"));
  lift_ = practise_button(tr("Take off"), tr("Takes tape or coil off the head (Delete)"));
  undo_ = practise_button(tr("Undo"), tr("Rubs out what was done last (Ctrl+Z)"));
  row->addWidget(hold_, 0, 0);
  row->addWidget(close_, 0, 1);
  row->addWidget(lift_, 1, 0);
  row->addWidget(undo_, 1, 1);
  card.rows->addLayout(row);
  connect(hold_, &QPushButton::clicked, &run_, [this] {
    run_.hold_tape();
    run_.end_deed();
  });
  connect(close_, &QPushButton::clicked, &run_, &ExerciseRun::close_tape);
  connect(lift_, &QPushButton::clicked, this, [this] {
    hand_.let_go();
    hand_.tool() == Tool::coil ? run_.take_coil_off() : run_.lift_tape();
  });
  connect(undo_, &QPushButton::clicked, &run_, &ExerciseRun::undo);
  return card.frame;
}

QWidget* TaskPanel::build_way_on() {
  auto* all = new QWidget;
  auto* column = new QVBoxLayout(all);
  column->setContentsMargins(0, 0, 0, 0);
  auto* row = new QHBoxLayout;
  previous_ = practise_button(tr("Back"), tr("The task before"));
  next_ = practise_button(tr("Next task"), tr("On to the next task; what is on the head stays"));
  next_->setObjectName("main");
  end_ = practise_button(tr("End here"),
                         tr("End the exercise and see the score; what is not done counts as not done"));
  row->addWidget(previous_);
  row->addWidget(next_, 1);
  column->addLayout(row);
  column->addWidget(end_);
  connect(previous_, &QPushButton::clicked, &run_, &ExerciseRun::previous_task);
  connect(next_, &QPushButton::clicked, &run_, &ExerciseRun::next_task);
  connect(end_, &QPushButton::clicked, &run_, &ExerciseRun::finish);
  return all;
}

void TaskPanel::show_run() {
  if (!run_.is_on()) return;
  const Task task = run_.task();
  progress_->setText(tr("Task %1 of %2: %3")
                         .arg(run_.task_index() + 1)
                         .arg(run_.tasks().size())
                         .arg(viewer::translated(viewer::task_name(task))));
  order_->setText(viewer::translated(viewer::task_order(run_.answers(), task)));
  for (LengthField* field : readings_) field->setVisible(task == Task::three_tapes);
  if (task == Task::three_tapes)
    for (const geometry::Step& step : geometry::steps_of(task)) {
      const geometry::Placed* typed = geometry::placed_for(run_.attempt(), step);
      reading(step.which)->set_value(typed ? typed->reading_mm : std::nullopt);
    }
  const bool last = run_.task_index() + 1 == run_.tasks().size();
  next_->setText(last ? tr("Finish") : tr("Next task"));
  previous_->setEnabled(run_.task_index() > 0);
  show_steps();
  show_tools();
  show_clock();
}

void TaskPanel::show_steps() {
  const QSignalBlocker quiet(steps_);
  const auto all = geometry::steps_of(run_.task());
  steps_->setVisible(all.size() > 1);
  while (steps_->count() > static_cast<int>(all.size())) delete steps_->takeItem(steps_->count() - 1);
  while (steps_->count() < static_cast<int>(all.size())) steps_->addItem(QString());
  for (const geometry::Step& step : all) {
    const QString name = viewer::translated(viewer::step_name(step));
    const bool done = run_.is_done(step);
    steps_->item(step.which)->setText(done ? tr("%1, done").arg(name) : name);
    steps_->item(step.which)
        ->setToolTip(step.task == Task::grid ? viewer::translated(viewer::spot_name(geometry::spot_of(step)))
                                             : QString());
  }
  steps_->setCurrentRow(run_.step().which);
  steps_->ensurePolished();
  int height = 2 * steps_->frameWidth() + 4;
  for (int i = 0; i < steps_->count(); ++i) height += steps_->sizeHintForRow(i);
  steps_->setFixedHeight(height);
}

void TaskPanel::show_tools() {
  for (const auto& [tool, button] : tools_) button->setChecked(hand_.tool() == tool);
  how_->setText(how_to(hand_.tool()));
  const bool tape = hand_.tool() == Tool::tape;
  hold_->setVisible(tape);
  close_->setVisible(tape);
  lift_->setEnabled(hand_.tool() == Tool::coil ? run_.coil().has_value() : run_.tape().has_value());
  undo_->setEnabled(run_.can_undo());
}

void TaskPanel::show_clock() {
  const auto left = run_.seconds_left();
  clock_->setVisible(left.has_value());
  if (left) clock_->setText(QStringLiteral("%1:%2").arg(*left / 60).arg(*left % 60, 2, 10, QLatin1Char('0')));
}

void TaskPanel::set_unit(LengthUnit unit) {
  for (LengthField* field : readings_) field->set_unit(unit);
  show_run();
}

}  // namespace scalpmark::window
