#include "viewer/window/frame/main_window.h"

#include <QApplication>
#include <QCloseEvent>
#include <QDragEnterEvent>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QMenuBar>
#include <QMimeData>
#include <algorithm>
#include <utility>

#include "models/files/own_files.h"
#include "viewer/window/frame/theme.h"

namespace scalpmark::window {

using viewer::CoilOn;

MainWindow::MainWindow(QWidget* parent)
    : QMainWindow(parent),
      settings_(Settings::read()),
      session_(Recovery::usual_folder()),
      visit_(session_),
      log_(session_),
      coil_(session_),
      undo_(session_),
      through_skin_(session_),
      files_(session_, settings_, *this),
      output_(
          session_, [this] { return stage_->picture(); }, *this) {
  setAcceptDrops(true);
  resize(1280, 800);
  setMinimumSize(960, 620);
  apply_theme(*qApp, settings_.dark, type_size_of(settings_));  // what is built afterwards is styled once
  build();
  connect_session();
  connect_worksheet();
  connect_stage();
  connect_files();
  connect_menus();
  connect_looks();
  connect_practise();

  menus_->show_recent(settings_.recent);
  set_unit(settings_.unit);
  stage_->set_animated(settings_.animated);
  looks_->apply();
  show_title();
}

// --- building

void MainWindow::build() {
  worksheet_ = new Worksheet(session_, visit_, log_);
  bar_ = new TopBar;
  column_ = new StageColumn(session_, undo_);
  notice_ = column_->notice();
  tapes_question_ = column_->tapes_question();
  work_ = column_->work();
  stage_ = column_->stage();
  verdict_ = column_->verdict();
  course_ = column_->course();
  explain_ = column_->explain();
  foot_ = new Foot;
  menus_ = new Menus(*this, *stage_, settings_);
  looks_ = std::make_unique<Looks>(settings_, *menus_, *worksheet_, *stage_);
  looked_into_ = std::make_unique<LookedInto>(session_, *worksheet_);
  placing_ = std::make_unique<PointPlacing>(session_, *stage_, *worksheet_->landmarks());
  undo_links_ = std::make_unique<UndoLinks>(undo_, session_, coil_, visit_, *placing_, *worksheet_);

  auto* row = new QHBoxLayout;
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(0);
  row->addWidget(worksheet_);
  row->addWidget(column_, 1);
  auto* centre = new QWidget;
  auto* all = new QVBoxLayout(centre);
  all->setContentsMargins(0, 0, 0, 0);
  all->setSpacing(0);
  all->addWidget(bar_);
  all->addLayout(row, 1);
  all->addWidget(foot_);
  setCentralWidget(centre);
  start_page_ = new StartPage(centre, files_, session_, settings_);
  next_mark_ = new NextMark(centre, session_, *worksheet_->save());

  director_ =
      std::make_unique<StageDirector>(session_, coil_, *stage_, *menus_, through_skin_, *looked_into_);
  connect(&session_, &Session::changed, this, &MainWindow::show_session);
  teach_ = std::make_unique<Teach>(*director_, *this);  // hears of a change when the window has shown it
  row->insertWidget(1, &teach_->panel());
  column_->layout()->addWidget(&teach_->bar());
  practise_ = std::make_unique<Practise>(session_, *stage_, *this);
  row->insertWidget(2, &practise_->column());
  director_->set_content(Mode::worksheet,
                         [this] { return worksheet_->step(worksheet_->current())->stage_content(coil()); });
  director_->set_content(Mode::teach, [this] { return teach_->stage_content(); });
  director_->set_own_stage(Mode::practise,
                           {[this] { practise_->refresh_stage(); }, [this] { practise_->look(); }});
  director_->set_content(Mode::check, [this] { return check_content(*worksheet_, coil()); });
  director_->set_content(Mode::course, [this] { return content_of_course(); });
  director_->set_content(Mode::explain, [this] { return explain_content(session_); });
}

// --- showing

void MainWindow::show_session() {
  coil_.follow_case();
  worksheet_->show_case();
  tapes_question_->show_case();
  director_->show_session(std::exchange(fresh_head_, false));
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
  // No lesson and no exercise on a head without its points.
  for (const Mode each : {Mode::teach, Mode::practise}) mode_button(each)->setEnabled(!placing);
  worksheet_->show_case();
  tapes_question_->show_case();
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
  verdict_->show_verdict(worksheet_->check()->verdict());
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
    coil_.follow_spot(log_.spot().row, log_.spot().column);
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
    coil_.follow_spot(log_.spot().row, log_.spot().column);
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
  const bool explain = mode == Mode::explain, teach = mode == Mode::teach, practise = mode == Mode::practise,
             on_wall = looks_->is_projected() && (teach || mode == Mode::check);
  bar_->show_mode(mode);
  worksheet_->setVisible((mode == Mode::worksheet || mode == Mode::check) && !on_wall);
  bar_->setVisible(!explain && !on_wall);
  menuBar()->setVisible(!explain && !on_wall);
  foot_->setVisible(!explain && !teach && !practise && !on_wall && mode != Mode::course);
  explain_->setVisible(explain);
  verdict_->setVisible(mode == Mode::check);
  course_->setVisible(mode == Mode::course);
  verdict_->set_projected(on_wall);
  teach_->panel().setVisible(teach && !on_wall);
  teach_->bar().setVisible(teach);
  looks_->scale_stage(teach, on_wall);
  director_->set_projected(on_wall);
  stage_->set_focus_frame(!explain);  // nothing to do by keys in a picture for patients
  if ((teach || practise || explain) && worksheet_->check()->wanted()) worksheet_->check()->want({});
  if (explain && before != Mode::explain && isVisible()) {
    before_explain_ = windowState();
    showFullScreen();
  }
  if (!explain && before == Mode::explain) setWindowState(before_explain_);
  if (mode != before) show_notice({});  // it was about what was done before
  practise_->set_shown(practise);
  show_undo();
  if (mode == Mode::check) worksheet_->go_to(Worksheet::check_index);
  through_skin_.set_for_patient(explain);
  refresh_stage();
  if (mode != before) {
    QApplication::processEvents(QEventLoop::ExcludeUserInputEvents);  // the stage has its new size
    director_->begin_looking();
  }
  if (explain && mode != before) {
    explain_->begin();
    stage_->setFocus();
  }
}

void MainWindow::set_unit(LengthUnit unit) {
  viewer::set_length_unit(unit);
  worksheet_->set_unit(unit);
  tapes_question_->set_unit(unit);
  verdict_->show_verdict(worksheet_->check()->verdict());
  teach_->set_unit(unit);
  practise_->set_unit(unit);
  refresh_stage();
}

// --- events

void MainWindow::keyPressEvent(QKeyEvent* event) {
  // Enter presses what has the keys, as Space does; dialogs have it so, windows do not.
  const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
  if (auto* button = qobject_cast<QPushButton*>(focusWidget()); enter && button && button->isEnabled()) {
    button->click();
    return;
  }
  if (event->key() != Qt::Key_Escape) {
    QMainWindow::keyPressEvent(event);
    return;
  }
  if (looks_->is_projected())
    menus_->show_projected(false);
  else if (mode() == Mode::explain)
    set_mode(Mode::worksheet);
  else if (worksheet_->check()->wanted())
    worksheet_->check()->want({});
  else if (coil().in_hand())
    put_coil_back();
}

void MainWindow::put_coil_back() {
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
  if (!practise_->may_leave() || !files_.may_leave()) {
    event->ignore();
    return;
  }
  if (!isFullScreen()) {
    settings_.window = saveGeometry();
    settings_.write();
  }
  session_.recovery().forget();
  session_.cancel();
  event->accept();
}

// Several files are the results of a class; one is what it says it is.
void MainWindow::take_dropped(const QStringList& files) {
  const std::string format = models::own_format_of(files.front().toStdString());
  const bool results = files.size() > 1 || format == "scalpmark-result";
  if (!results && format != "scalpmark-exercise") {
    files_.take_dropped(files.front());
    return;
  }
  if (session_.unplaced()) return;
  set_mode(Mode::practise);
  results ? practise_->take_results(files) : practise_->open_exercise(files.front());
}

void MainWindow::dragEnterEvent(QDragEnterEvent* event) {
  const auto urls = event->mimeData()->urls();
  const bool local = std::all_of(urls.begin(), urls.end(), [](const QUrl& url) { return url.isLocalFile(); });
  if (!urls.empty() && local) event->acceptProposedAction();
}

void MainWindow::dropEvent(QDropEvent* event) {
  QStringList files;
  for (const QUrl& url : event->mimeData()->urls())
    if (url.isLocalFile()) files << url.toLocalFile();
  if (!files.isEmpty()) take_dropped(files);
}

}  // namespace scalpmark::window
