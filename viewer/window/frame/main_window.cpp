#include "viewer/window/frame/main_window.h"

#include <QApplication>
#include <QCloseEvent>
#include <QDragEnterEvent>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QMenuBar>
#include <QMimeData>
#include <utility>


namespace scalpmark::window {

using viewer::CoilOn;

namespace {

constexpr double lesson_type_scale = 1.4;  // read from the back of a class room

}  // namespace

MainWindow::MainWindow(QWidget* parent)
    : QMainWindow(parent),
      settings_(Settings::read()),
      session_(Recovery::usual_folder()),
      visit_(session_),
      log_(session_),
      coil_(session_),
      through_skin_(session_),
      files_(session_, settings_, *this),
      output_(
          session_, [this] { return stage_->picture(); }, *this) {
  setAcceptDrops(true);
  resize(1280, 800);
  setMinimumSize(960, 620);
  build();
  connect_session();
  connect_worksheet();
  connect_stage();
  connect_files();
  connect_menus();
  connect_settings();

  menus_->show_recent(settings_.recent);
  set_unit(settings_.unit);
  stage_->set_animated(settings_.animated);
  set_mode(Mode::worksheet);
  show_title();
}

// --- building

void MainWindow::build() {
  worksheet_ = new Worksheet(session_, visit_, log_);
  bar_ = new TopBar;
  QWidget* right = build_stage_column();
  foot_ = build_foot();
  menus_ = new Menus(*this, *stage_, settings_);
  looked_into_ = std::make_unique<LookedInto>(session_, *worksheet_);
  placing_ = std::make_unique<PointPlacing>(session_, *stage_, *worksheet_->landmarks());

  auto* row = new QHBoxLayout;
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(0);
  row->addWidget(worksheet_);
  row->addWidget(right, 1);
  auto* centre = new QWidget;
  auto* all = new QVBoxLayout(centre);
  all->setContentsMargins(0, 0, 0, 0);
  all->setSpacing(0);
  all->addWidget(bar_);
  all->addLayout(row, 1);
  all->addWidget(foot_);
  setCentralWidget(centre);

  director_ =
      std::make_unique<StageDirector>(session_, coil_, *stage_, *menus_, through_skin_, *looked_into_);
  connect(&session_, &Session::changed, this, &MainWindow::show_session);
  teach_ = std::make_unique<Teach>(*director_, *this);  // hears of a change when the window has shown it
  row->insertWidget(1, &teach_->panel());
  right->layout()->addWidget(&teach_->bar());
  director_->set_content(Mode::worksheet,
                         [this] { return worksheet_->step(worksheet_->current())->stage_content(coil()); });
  director_->set_content(Mode::teach, [this] { return teach_->stage_content(); });
  director_->set_content(Mode::check, [this] { return check_content(*worksheet_, coil()); });
  director_->set_content(Mode::course, [this] { return content_of_course(); });
  director_->set_content(Mode::explain, [this] { return explain_content(session_, coil()); });
}

QWidget* MainWindow::build_stage_column() {
  notice_ = new NoticeBar;
  work_ = new WorkBar;
  stage_ = new StageView;
  verdict_ = new VerdictPanel;
  course_ = new CoursePanel;
  explain_ = new ExplainPanel;
  auto* column_widget = new QWidget;
  auto* column = new QVBoxLayout(column_widget);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(0);
  column->addWidget(notice_);
  column->addWidget(work_);
  column->addWidget(stage_, 1);
  column->addWidget(verdict_);
  column->addWidget(course_);
  column->addWidget(explain_);
  return column_widget;
}

QWidget* MainWindow::build_foot() {
  auto* foot = new QWidget;
  foot->setObjectName("foot");
  foot->setAttribute(Qt::WA_StyledBackground);
  auto* column = new QVBoxLayout(foot);
  column->setContentsMargins(12, 5, 12, 5);
  column->setSpacing(2);
  status_ = new QLabel;
  status_->setObjectName("status");
  status_->setAccessibleName(tr("Where the coil is"));
  status_->setTextInteractionFlags(Qt::TextSelectableByMouse);
  column->addWidget(status_);
  return foot;
}

// --- showing

void MainWindow::show_session() {
  coil_.follow_case();
  worksheet_->show_case();
  if (std::exchange(fresh_head_, false))
    director_->begin_step();
  else
    refresh_stage();
  menus_->show_history(session_.history());
  show_title();
  explain_->show_case(session_, menus_->label_in_explain());
}

void MainWindow::show_title() {
  QString name = session_.file().isEmpty() ? QString::fromStdString(session_.case_file().the_case.label)
                                           : QFileInfo(session_.file()).fileName();
  if (name.isEmpty()) name = tr("Unnamed case");
  setWindowTitle(tr("%1[*] - Scalpmark").arg(name));
  setWindowModified(!session_.is_saved());
}

void MainWindow::show_unplaced() {
  const bool placing = session_.unplaced().has_value();
  mode_button(Mode::teach)->setEnabled(!placing);  // no lesson on a head without its points
  worksheet_->show_case();
  if (!placing) {
    stage_->set_pointing(worksheet_->check()->wanted().has_value());
    director_->begin_step();
    return;
  }
  const bool fresh = !stage_->is_bare();
  refresh_stage();
  stage_->set_pointing(true);
  if (!fresh) return;
  set_mode(Mode::worksheet);  // the points are placed from there
  worksheet_->go_to(Worksheet::landmarks_index);
  placing_->begin();
}

void MainWindow::show_today() {
  verdict_->show_check(visit_.check(), visit_.problem(), visit_.doubt());
  // The next mark is asked for without another click.
  CheckStep* step = worksheet_->check();
  if (step->wanted() == TodaysMark::site && visit_.mark(TodaysMark::site))
    step->want(visit_.mark(TodaysMark::edge) ? std::nullopt : std::optional(TodaysMark::edge));
  else if (step->wanted() == TodaysMark::edge && visit_.mark(TodaysMark::edge))
    step->want({});
  // Places to choose from may lie behind the head.
  step->shows_new_question() ? director_->refresh_and_look() : refresh_stage();
}

void MainWindow::show_found_landmark() {
  refresh_stage();
  if (worksheet_->landmarks()->found()) stage_->look_at(worksheet_->landmarks()->gaze_at_found());
}

void MainWindow::step_changed() {
  const auto step = worksheet_->current();
  if (step != Worksheet::check_index) worksheet_->check()->want({});
  if (!coil().in_hand()) coil_.put_back(step == Worksheet::search_index ? CoilOn::start : CoilOn::treatment);
  if (step == Worksheet::pulses_index) {
    coil_.lay_on_spot(log_.spot().row, log_.spot().column);
    worksheet_->pulses()->take_keys();
  }
  director_->begin_step();
}

StageContent MainWindow::content_of_course() {
  course_check_.work_out(session_.head().head, session_.case_file(), session_.plan());
  course_->show_course(course_check_, session_.case_file().the_case.visits);
  return course_content(session_, course_check_);
}

void MainWindow::lay_on_spot() {
  if (worksheet_->current() == Worksheet::pulses_index)
    coil_.lay_on_spot(log_.spot().row, log_.spot().column);
}

void MainWindow::point_on_skin(const Eigen::Vector3d& at) {
  if (session_.unplaced())
    placing_->place(at);
  else if (const auto wanted = worksheet_->check()->wanted(); wanted && session_.is_ready())
    visit_.set(*wanted, session_.head().head.skin().closest(at));
}

// --- modes

void MainWindow::set_mode(Mode mode) {
  const Mode before = this->mode();
  director_->set_mode(mode);
  const bool explain = mode == Mode::explain, teach = mode == Mode::teach;
  bar_->show_mode(mode);
  worksheet_->setVisible(mode == Mode::worksheet || mode == Mode::check);
  bar_->setVisible(!explain);
  menuBar()->setVisible(!explain);
  foot_->setVisible(!explain && !teach);
  explain_->setVisible(explain);
  verdict_->setVisible(mode == Mode::check);
  course_->setVisible(mode == Mode::course);
  teach_->panel().setVisible(teach);
  teach_->bar().setVisible(teach);
  stage_->set_type_scale(teach ? lesson_type_scale : 1);
  stage_->set_focus_frame(!explain);  // nothing to do by keys in a picture for patients
  if ((teach || explain) && worksheet_->check()->wanted()) worksheet_->check()->want({});
  if (explain && before != Mode::explain && isVisible()) {
    before_explain_ = windowState();
    showFullScreen();
  }
  if (!explain && before == Mode::explain) setWindowState(before_explain_);
  if (mode != before) show_notice({});  // it was about what was done before
  if (mode == Mode::check) worksheet_->go_to(Worksheet::check_index);
  through_skin_.set_for_patient(explain);
  refresh_stage();
  if (mode != before) {
    QApplication::processEvents(QEventLoop::ExcludeUserInputEvents);  // the stage has its new size
    director_->begin_looking();
  }
  if (explain) stage_->setFocus();
}

void MainWindow::set_unit(LengthUnit unit) {
  worksheet_->set_unit(unit);
  teach_->set_unit(unit);
}

// --- events

void MainWindow::keyPressEvent(QKeyEvent* event) {
  if (event->key() != Qt::Key_Escape) {
    QMainWindow::keyPressEvent(event);
    return;
  }
  if (mode() == Mode::explain)
    set_mode(Mode::worksheet);
  else if (worksheet_->check()->wanted())
    worksheet_->check()->want({});
  else if (coil().in_hand())
    coil_.lay_on(worksheet_->current() == Worksheet::search_index ? CoilOn::start : CoilOn::treatment);
}

void MainWindow::output_is_over(bool written) {
  if (!session_.is_working()) work_->rest();
  if (std::exchange(close_when_written_, false) && written) close();
}

void MainWindow::closeEvent(QCloseEvent* event) {
  if (output_.is_writing()) {
    // A sheet that was asked for is not lost; it takes seconds.
    close_when_written_ = true;
    event->ignore();
    return;
  }
  if (!files_.may_leave()) {
    event->ignore();
    return;
  }
  session_.recovery().forget();
  session_.cancel();
  event->accept();
}

void MainWindow::dragEnterEvent(QDragEnterEvent* event) {
  const auto urls = event->mimeData()->urls();
  if (urls.size() == 1 && urls.front().isLocalFile()) event->acceptProposedAction();
}

void MainWindow::dropEvent(QDropEvent* event) {
  const auto urls = event->mimeData()->urls();
  if (urls.size() == 1 && urls.front().isLocalFile()) files_.take_dropped(urls.front().toLocalFile());
}

}  // namespace scalpmark::window
