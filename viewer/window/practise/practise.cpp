#include "viewer/window/practise/practise.h"

#include <QEvent>
#include <QScrollBar>
#include <QTimer>
#include <algorithm>
#include <cmath>

#include "viewer/practise/class_page.h"
#include "viewer/window/practise/practise_content.h"
#include "viewer/words/words.h"

namespace scalpmark::window {

using viewer::Thing;

namespace {

constexpr double column_px = 364, column_usual_height_px = 800, widest_column = 1.35;
constexpr double class_share = 0.46;  // of the window, for a class

}  // namespace

Practise::Practise(Session& session, StageView& stage, QWidget& window)
    : session_(session),
      stage_(stage),
      window_(window),
      hand_(new PractiseHand(stage, run_)),
      beginning_(0),
      judging_(0),
      gathering_(0) {
  hand_->setParent(this);
  build();
  connect_run();
  connect_files();
}

void Practise::build() {
  setup_ = new SetupPanel;
  task_ = new TaskPanel(run_, *hand_);
  score_ = new ScorePanel(run_);
  class_ = new ClassPanel;
  pages_ = new PractisePages;
  pages_->setObjectName("page");
  for (QWidget* page : std::initializer_list<QWidget*>{setup_, task_, score_, class_})
    pages_->addWidget(page);
  scroll_ = new QScrollArea;
  scroll_->setObjectName("worksheet");
  scroll_->setAccessibleName(tr("Practise"));
  scroll_->setWidgetResizable(true);
  scroll_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  scroll_->setFocusPolicy(Qt::NoFocus);
  scroll_->setWidget(pages_);
  scroll_->hide();
  window_.installEventFilter(this);
  go_to(Page::setup);
}

void Practise::connect_run() {
  connect(&run_, &ExerciseRun::changed, this, [this] {
    refresh_stage();
    emit undo_changed();
  });
  connect(hand_, &PractiseHand::moved, this, &Practise::refresh_stage);
  connect(&run_, &ExerciseRun::begun, this, [this] { go_to(Page::task); });
  connect(&run_, &ExerciseRun::step_changed, this, [this] {
    hand_->let_go();
    take_usual_tool();
    scroll_to_top();
    look();
  });
  connect(hand_, &PractiseHand::tool_changed, this, [this](Tool tool) {
    if (tool == Tool::coil && run_.is_on()) stage_.look(operators_look(run_));
  });
  // On with the hands where the head is; the panel has done its part by then.
  for (QPushButton* button : {task_->next(), task_->previous()})
    connect(button, &QPushButton::clicked, this, [this] {
      if (run_.is_on()) stage_.setFocus();
    });
  connect(&run_, &ExerciseRun::over, this, &Practise::judge);
  connect(score_, &ScorePanel::step_shown, this, [this] {
    refresh_stage();
    look();
  });
  connect(score_->again(), &QPushButton::clicked, &run_, &ExerciseRun::again);
  connect(score_->other(), &QPushButton::clicked, this, [this] {
    if (!may_leave()) return;
    run_.leave();
    go_to(Page::setup);
  });
  connect(class_->done(), &QPushButton::clicked, this, [this] {
    results_.reset();
    go_to(Page::setup);
  });
  connect(setup_, &SetupPanel::chosen, setup_, [this] { setup_->set_problem({}); });
  connect(setup_->begin(), &QPushButton::clicked, this, &Practise::begin);
}

// --- pages

void Practise::go_to(Page page) {
  page_ = page;
  pages_->setCurrentIndex(static_cast<int>(page));
  pages_->updateGeometry();
  size_column();
  scroll_to_top();
  hand_->set_listening(shown_ && page == Page::task);
  if (!shown_) return;
  refresh_stage();
  look();
  if (page == Page::task)
    stage_.setFocus();
  else if (page == Page::score)
    score_->table()->setFocus();
}

void Practise::scroll_to_top() {
  scroll_->verticalScrollBar()->setValue(0);
}

void Practise::size_column() {
  const double scale = std::clamp(window_.height() / column_usual_height_px, 1.0, widest_column);
  const double width = page_ == Page::class_page ? class_share * window_.width() : scale * column_px;
  scroll_->setFixedWidth(static_cast<int>(std::lround(width)));
  class_->size_type(window_.height());
}

bool Practise::eventFilter(QObject* watched, QEvent* event) {
  if (watched == &window_ && event->type() == QEvent::Resize && shown_) size_column();
  return false;
}

void Practise::set_shown(bool shown) {
  if (shown_ == shown) return;
  shown_ = shown;
  scroll_->setVisible(shown);
  stage_.set_coil_movable(!shown);
  if (shown) take_case();
  if (!shown) {
    hand_->set_listening(false);
    return;
  }
  stage_.set_pointing(false);
  view_.reset();  // the stage was turned elsewhere meanwhile
  go_to(page_);
}

void Practise::take_case() {
  if (setup_is_of_file_ || !session_.is_ready()) return;
  models::ExerciseSetup setup = models::default_exercise();
  setup.the_case = session_.case_file().the_case;
  setup.the_case.visits = {};
  setup.the_case.label.clear();
  if (setup_is_shown_)
    setup_->take_case(setup.the_case);
  else
    setup_->show_setup(setup);
  setup_is_shown_ = true;
}

void Practise::set_unit(LengthUnit unit) {
  task_->set_unit(unit);
  if (run_.is_over()) score_->show_score();
  if (results_) class_->show_class(*results_);
  refresh_stage();
}

// --- the stage

void Practise::show_head_of_case() {
  if (!session_.is_ready()) return;
  viewer::Shown shown;
  shown.things = {Thing::skin};
  stage_.set_thin_skin(session_.thin_skin());
  stage_.show_plan(session_.head().head, session_.case_file().the_case, session_.plan(), shown);
}

void Practise::show_class_on_stage() {
  const geometry::RightAnswers& answers = *results_->answers;
  stage_.show_plan(answers.head, answers.the_case, answers.plan,
                   viewer::class_shown(*results_, class_hands_));
}

void Practise::refresh_stage() {
  if (!shown_) return;
  if (page_ == Page::class_page && results_) {
    show_class_on_stage();
    return;
  }
  if (!run_.is_on() && !run_.is_over()) {
    show_head_of_case();
    return;
  }
  viewer::Shown shown;
  if (run_.is_on()) {
    shown = exercise_shown(run_, hand_->by_keys());
  } else if (!run_.scores().empty()) {
    const geometry::Score& score = run_.scores().back();
    const auto index = score_->shown_step();
    if (index && *index < score.steps.size())
      shown = replay_shown(run_, score.steps[*index]);
    else if (score.pulse)
      shown = pulse_shown(run_, *score.pulse);
    else
      shown.things = {Thing::skin};
  }
  stage_.set_thin_skin({});
  stage_.show_plan(run_.head(), run_.answers().the_case, run_.answers().plan, shown);
  stage_.set_coil_movable(false);
}

void Practise::look() {
  if (!shown_) return;
  if (page_ == Page::class_page && results_) {
    stage_.look_at(viewer::class_gaze(*results_));
    return;
  }
  if (run_.is_on()) {
    const StageLook from = exercise_look(run_);
    const bool same = !from.close_up && view_ == from.view;
    view_ = from.close_up ? std::nullopt : std::optional(from.view);
    if (!same) stage_.look(from);
    return;
  }
  view_.reset();
  if (!run_.is_over()) {
    stage_.look(viewer::View::front_left);
    return;
  }
  const geometry::Score& score = run_.scores().back();
  const auto index = score_->shown_step();
  if (index && *index < score.steps.size())
    stage_.look(replay_look(run_, score.steps[*index]));
  else if (score.pulse)
    stage_.look(pulse_look(run_, *score.pulse));
}

void Practise::look_from(viewer::View view) {
  view_.reset();
  if (run_.is_on() && run_.coil())
    stage_.look(operators_look(run_, view));
  else if (view != viewer::View::square_on)
    stage_.look(view);
  else
    look();
}

/// The tool most hands take up at this task.
void Practise::take_usual_tool() {
  using geometry::Task;
  switch (run_.task()) {
    case Task::four_points:
      if (hand_->tool() != Tool::cross) hand_->take(Tool::finger);
      break;
    case Task::three_tapes:
      hand_->take(Tool::tape);
      break;
    case Task::coil:
    case Task::coil_on_given_marks:
      hand_->take(Tool::coil);
      break;
    default:
      if (hand_->tool() == Tool::finger || hand_->tool() == Tool::coil || hand_->tool() == Tool::none)
        hand_->take(Tool::tape);
      break;
  }
}

// --- doing it

models::ExerciseSetup Practise::with_own_head(models::ExerciseSetup setup) const {
  if (setup.exercise.drawn_head || setup_->brings_head() || !session_.is_ready()) return setup;
  setup.head = session_.case_file().head;
  setup.folder = session_.case_file().folder;
  setup.the_case.tape_mm = session_.case_file().the_case.tape_mm;
  return setup;
}

void Practise::begin() {
  const models::ExerciseSetup setup = with_own_head(setup_->setup());
  struct Made {
    std::optional<models::LoadedHead> head;
    std::shared_ptr<const geometry::RightAnswers> answers;
  };
  const auto made = std::make_shared<Made>();
  setup_->set_problem({});
  setup_->set_busy(true);
  emit notice({}, false);
  beginning_.ask(
      [setup, made](LatestWork::Job& job) {
        geometry::check_exercise(setup.exercise);
        made->head = models::exercise_head(
            setup, [&job](const geometry::Message&, double) { job.stop_if_cancelled(); });
        made->answers = std::make_shared<const geometry::RightAnswers>(
            geometry::right_answers(made->head->head, setup.the_case, setup.exercise));
      },
      [this, setup, made] {
        setup_->set_busy(false);
        hands_.reset();
        hand_->take(Tool::none);
        view_.reset();
        run_.begin(setup, *made->head, made->answers);
      });
}

void Practise::judge() {
  go_to(Page::score);
  score_->show_score();
  if (hands_) {
    score_->show_hands(hands_);
    return;
  }
  const auto found = std::make_shared<std::shared_ptr<const geometry::Tolerance>>();
  judging_.ask(
      [answers = run_.shared_answers(), found](LatestWork::Job&) { *found = viewer::hands_here(*answers); },
      [this, found] {
        hands_ = *found;
        if (run_.is_over()) score_->show_hands(hands_);
      });
}

void Practise::take_results(const QStringList& files) {
  if (files.isEmpty() || !may_leave()) return;
  std::vector<std::filesystem::path> paths;
  for (const QString& file : files) paths.emplace_back(file.toStdString());
  std::sort(paths.begin(), paths.end());
  struct Made {
    std::optional<viewer::ClassResults> results;
    std::shared_ptr<const geometry::Tolerance> hands;
  };
  const auto made = std::make_shared<Made>();
  emit notice({}, false);
  emit working(tr("Scoring the class"), 0);
  gathering_.ask(
      [paths, made](LatestWork::Job& job) {
        made->results = viewer::class_results(paths, models::read_skin, [&job] { job.stop_if_cancelled(); });
        job.stop_if_cancelled();
        made->hands = viewer::hands_here(*made->results->answers);
      },
      [this, made] {
        emit rested();
        results_ = std::move(made->results);
        class_hands_ = made->hands;
        class_->show_class(*results_);
        run_.leave();
        go_to(Page::class_page);
      });
}

}  // namespace scalpmark::window
