#include "viewer/window/practise/setup_panel.h"

#include <QGridLayout>
#include <QHBoxLayout>
#include <QSignalBlocker>

#include "geometry/plan/other_side.h"
#include "viewer/window/practise/practise_card.h"
#include "viewer/words/exercise_words.h"
#include "viewer/words/words.h"

namespace scalpmark::window {

namespace {

QSpinBox* spin(const QString& name, int low, int high, const QString& lowest_says, const QString& tooltip) {
  auto* box = new QSpinBox;
  box->setRange(low, high);
  box->setSpecialValueText(lowest_says);
  box->setAccessibleName(name);
  box->setToolTip(tooltip);
  // Its line to type into is asked for what it is as well.
  if (auto* edit = box->findChild<QLineEdit*>()) edit->setToolTip(tooltip);
  return box;
}

}  // namespace

SetupPanel::SetupPanel(QWidget* parent) : QWidget(parent) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(8, 8, 8, 8);
  column->setSpacing(6);
  column->addWidget(build_head());
  problem_ = practise_text("problem");
  column->addWidget(problem_);
  begin_ = practise_button(tr("Begin"), tr("Begin the exercise on a fresh head"));
  begin_->setObjectName("main");
  column->addWidget(begin_);
  column->addWidget(build_tasks());
  column->addWidget(build_limits());
  auto* row = new QHBoxLayout;
  open_ = practise_button(tr("Open\u2026"), tr("Open an exercise that was saved"));
  save_ = practise_button(tr("Save\u2026"), tr("Save this exercise, for others to open"));
  results_ =
      practise_button(tr("Class\u2026"),
                      tr("Put the results of a class together; they can be dropped on the window as well"));
  for (QPushButton* button : {open_, save_, results_}) row->addWidget(button);
  column->addLayout(row);
  auto* note = practise_text("quiet");
  note->setText(viewer::translated(viewer::not_a_certificate()));
  column->addWidget(note);
  column->addStretch(1);
  set_problem({});
  show_setup(models::default_exercise());
}

QWidget* SetupPanel::build_head() {
  const PractiseCard card = practise_card(tr("Head"));
  head_ =
      new Choice(tr("Whose head"),
                 {{tr("Drawn for a number"),
                   tr("An adult's head drawn by chance; the same number gives a whole class the same head")},
                  {tr("The case's own"), tr("The head of the case on the worksheet")}},
                 nullptr, Qt::Vertical);
  number_ = spin(tr("Number of the head"), 0, static_cast<int>(geometry::largest_number), {},
                 tr("From 0 to %1. The same number gives the same head.").arg(geometry::largest_number));
  auto* row = new QHBoxLayout;
  auto* label = new QLabel(tr("Number"));
  label->setBuddy(number_);
  row->addWidget(label);
  row->addWidget(number_);
  row->addStretch(1);
  side_ = new Choice(tr("Side"), {{tr("Left"), tr("The left side is stimulated")},
                                  {tr("Right"), tr("The right side is stimulated")}});
  spot_ = new SpotPad(tr("The spot that answers"));
  auto* spot_label = new QLabel(tr("Spot that answers"));
  card.rows->addWidget(head_);
  card.rows->addLayout(row);
  card.rows->addWidget(side_);
  auto* spot_row = new QHBoxLayout;
  spot_row->addWidget(spot_label);
  spot_row->addWidget(spot_);
  card.rows->addLayout(spot_row);
  connect(head_, &Choice::picked, this, [this] {
    show_own_head();
    emit chosen();
  });
  connect(number_, QOverload<int>::of(&QSpinBox::valueChanged), this, &SetupPanel::chosen);
  connect(side_, &Choice::picked, this, [this](int index) {
    spot_->set_side(index == 0 ? geometry::Side::left : geometry::Side::right);
    spot_->choose(answers_);
    emit chosen();
  });
  connect(spot_, &SpotPad::chosen, this, [this](int row_chosen, int column_chosen) {
    answers_ = {row_chosen, column_chosen};
    spot_->choose(answers_);
    emit chosen();
  });
  return card.frame;
}

QWidget* SetupPanel::build_tasks() {
  const PractiseCard card = practise_card(tr("Tasks"));
  auto* row = new QHBoxLayout;
  all_ = practise_button(tr("All"), tr("The whole job"));
  none_ = practise_button(tr("None"), tr("To pick a few"));
  row->addWidget(all_);
  row->addWidget(none_);
  row->addStretch(1);
  card.rows->addLayout(row);
  for (const geometry::Task task : geometry::all_tasks) {
    auto* box = new QCheckBox(viewer::translated(viewer::task_name(task)));
    tasks_.push_back(box);
    card.rows->addWidget(box);
    connect(box, &QCheckBox::clicked, this, &SetupPanel::chosen);
  }
  const auto check_all = [this](bool on) {
    for (QCheckBox* box : tasks_) box->setChecked(on);
    emit chosen();
  };
  connect(all_, &QPushButton::clicked, this, [check_all] { check_all(true); });
  connect(none_, &QPushButton::clicked, this, [check_all] { check_all(false); });
  return card.frame;
}

QWidget* SetupPanel::build_limits() {
  const PractiseCard card = practise_card(tr("Limits"));
  auto* grid = new QGridLayout;
  minutes_ = spin(tr("Minutes for all of it"), 0, geometry::most_minutes, tr("no limit"),
                  tr("Minutes for all of it; 0 is no limit, %1 the most").arg(geometry::most_minutes));
  tries_ = spin(tr("Tries"), 0, geometry::most_tries, tr("no limit"),
                tr("How often it may be done; 0 is no limit, %1 the most").arg(geometry::most_tries));
  title_ = new QLineEdit;
  title_->setMaxLength(static_cast<int>(geometry::longest_title));
  title_->setAccessibleName(tr("Name of the exercise"));
  title_->setToolTip(tr("What the exercise is called in its file and on the class page; may stay empty"));
  int row = 0;
  for (const auto& [name, field] :
       {std::pair<QString, QWidget*>(tr("Minutes"), minutes_), {tr("Tries"), tries_}, {tr("Name"), title_}}) {
    auto* label = new QLabel(name);
    label->setBuddy(field);
    grid->addWidget(label, row, 0);
    grid->addWidget(field, row, 1);
    ++row;
  }
  card.rows->addLayout(grid);
  return card.frame;
}

void SetupPanel::show_own_head() {
  number_->setEnabled(head_->chosen() == 0 || task(geometry::Task::coil_on_given_marks)->isChecked() ||
                      task(geometry::Task::find_again)->isChecked());
}

void SetupPanel::show_setup(const models::ExerciseSetup& setup) {
  setup_ = setup;
  const QSignalBlocker quiet(this);
  const geometry::Exercise& exercise = setup.exercise;
  head_->choose(exercise.drawn_head ? 0 : 1);
  number_->setValue(static_cast<int>(exercise.number));
  side_->choose(setup.the_case.side == geometry::Side::left ? 0 : 1);
  spot_->set_side(setup.the_case.side);
  answers_ = setup.the_case.hotspot;
  spot_->choose(answers_);
  minutes_->setValue(exercise.minutes.value_or(0));
  tries_->setValue(exercise.tries.value_or(0));
  title_->setText(QString::fromStdString(exercise.title));
  for (const geometry::Task each : geometry::all_tasks)
    task(each)->setChecked(geometry::has_task(exercise, each));
  show_own_head();
}

models::ExerciseSetup SetupPanel::setup() const {
  models::ExerciseSetup setup = setup_;
  geometry::Exercise& exercise = setup.exercise;
  exercise.drawn_head = head_->chosen() == 0;
  exercise.number = static_cast<std::uint32_t>(number_->value());
  exercise.title = title_->text().trimmed().toStdString();
  exercise.minutes = minutes_->value() > 0 ? std::optional(minutes_->value()) : std::nullopt;
  exercise.tries = tries_->value() > 0 ? std::optional(tries_->value()) : std::nullopt;
  exercise.tasks.clear();
  for (const geometry::Task each : geometry::all_tasks)
    if (task(each)->isChecked()) exercise.tasks.push_back(each);
  const geometry::Side side = side_->chosen() == 0 ? geometry::Side::left : geometry::Side::right;
  if (side != setup.the_case.side) geometry::lay_on_side(setup.the_case, side);
  geometry::take_hotspot(setup.the_case, answers_);
  return setup;
}

void SetupPanel::set_problem(const QString& sentence) {
  problem_->setText(sentence);
  problem_->setVisible(!sentence.isEmpty());
}

void SetupPanel::set_busy(bool busy) {
  begin_->setEnabled(!busy);
  begin_->setText(busy ? tr("Drawing the head\u2026") : tr("Begin"));
}

}  // namespace scalpmark::window
