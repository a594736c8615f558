#include "viewer/window/frame/main_window.h"

#include <QApplication>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QMenuBar>
#include <QPrinter>

#include "viewer/window/frame/dialogs.h"

namespace scalpmark::window {

using viewer::CoilOn;

namespace {

constexpr double lesson_type_scale = 1.4;  // read from the back of a class room

}  // namespace

MainWindow::MainWindow(QWidget* parent)
    : QMainWindow(parent), settings_(Settings::read()), session_(Recovery::usual_folder()), visit_(session_) {
  setAcceptDrops(true);
  resize(1280, 800);
  setMinimumSize(960, 620);

  auto* centre = new QWidget;
  auto* all = new QVBoxLayout(centre);
  all->setContentsMargins(0, 0, 0, 0);
  all->setSpacing(0);
  build_bar(all);
  build_centre(all);
  build_foot(all);
  setCentralWidget(centre);
  build_menus();
  connect_all();
  connect_looked_into();

  ask_unsaved = [this] { return ask_about_unsaved(this); };
  ask_printer = [this] { return choose_printer(); };
  ask_recover = [this](const Leftover& leftover) { return ask_about_leftover(this, leftover); };

  constexpr int at_rest_ms = 400;
  coil_rests_.setSingleShot(true);
  coil_rests_.setInterval(at_rest_ms);
  connect(&coil_rests_, &QTimer::timeout, &session_, &Session::want_fields);

  set_unit(settings_.unit);
  stage_->set_animated(settings_.animated);
  set_mode(Mode::worksheet);
  show_title();
}

// --- building

void MainWindow::build_bar(QVBoxLayout* into) {
  bar_ = new QWidget;
  bar_->setObjectName("topBar");
  bar_->setAttribute(Qt::WA_StyledBackground);
  auto* row = new QHBoxLayout(bar_);
  row->setContentsMargins(8, 6, 8, 6);
  modes_ = new QButtonGroup(this);
  const auto add = [&](Mode mode, const QString& name, const QString& tooltip) {
    auto* button = new QPushButton(name);
    button->setObjectName("mode");
    button->setCheckable(true);
    button->setToolTip(tooltip);
    modes_->addButton(button, static_cast<int>(mode));
    row->addWidget(button);
    return button;
  };
  add(Mode::worksheet, tr("Worksheet"), tr("Enter a case, step by step"));
  add(Mode::teach, tr("Teach"), tr("Walk a class through the procedure"))->hide();
  add(Mode::check, tr("Check"), tr("Check today's marks, in large type"));
  add(Mode::explain, tr("Explain"), tr("Show a patient what happens"));
  row->addStretch(1);
  auto* picture = new QPushButton(tr("Picture\u2026"));
  picture->setObjectName("mode");
  picture->setToolTip(tr("Save what the stage shows as a picture"));
  row->addWidget(picture);
  auto* sheet = new QPushButton(tr("Sheet\u2026"));
  sheet->setObjectName("mode");
  sheet->setToolTip(tr("Save the printed placement sheet as PDF, A4 or Letter"));
  row->addWidget(sheet);
  connect(sheet, &QPushButton::clicked, this, &MainWindow::save_sheet);
  into->addWidget(bar_);
  connect(modes_, &QButtonGroup::idClicked, this, [this](int id) { set_mode(static_cast<Mode>(id)); });
  connect(picture, &QPushButton::clicked, this, &MainWindow::save_picture);
}

void MainWindow::build_centre(QVBoxLayout* into) {
  worksheet_ = new Worksheet(session_, visit_);
  stage_ = new StageView;
  verdict_ = new VerdictPanel;

  notice_ = new NoticeBar;
  work_ = new WorkBar;
  connect(work_, &WorkBar::cancelled, this, [this] {
    if (output_) {
      give_up_output();
      return;
    }
    session_.cancel();
    worksheet_->show_case();
  });
  explain_ = new ExplainPanel;
  connect(explain_, &ExplainPanel::done, this, [this] { set_mode(Mode::worksheet); });

  auto* right = new QWidget;
  stage_column_ = new QVBoxLayout(right);
  stage_column_->setContentsMargins(0, 0, 0, 0);
  stage_column_->setSpacing(0);
  stage_column_->addWidget(notice_);
  stage_column_->addWidget(work_);
  stage_column_->addWidget(stage_, 1);
  stage_column_->addWidget(verdict_);
  stage_column_->addWidget(explain_);

  centre_row_ = new QHBoxLayout;
  centre_row_->setContentsMargins(0, 0, 0, 0);
  centre_row_->setSpacing(0);
  centre_row_->addWidget(worksheet_);
  centre_row_->addWidget(right, 1);
  into->addLayout(centre_row_, 1);
}

void MainWindow::build_foot(QVBoxLayout* into) {
  foot_ = new QWidget;
  foot_->setObjectName("foot");
  foot_->setAttribute(Qt::WA_StyledBackground);
  auto* column = new QVBoxLayout(foot_);
  column->setContentsMargins(12, 5, 12, 5);
  column->setSpacing(2);
  status_ = new QLabel;
  status_->setObjectName("status");
  status_->setAccessibleName(tr("Where the coil is"));
  status_->setTextInteractionFlags(Qt::TextSelectableByMouse);
  column->addWidget(status_);
  into->addWidget(foot_);
}

void MainWindow::connect_all() {
  connect(&session_, &Session::head_changed, this, [this] {
    coil_ = {};
    fresh_head_ = true;
    if (looks_through_skin() && no_cortex_.isEmpty()) session_.want_cortex();
  });
  connect(&session_, &Session::no_cortex, this, [this](const QString& sentence) {
    no_cortex_ = sentence;
    say_no_cortex();
  });
  connect(&session_, &Session::changed, this, &MainWindow::show_session);
  connect(&session_, &Session::unplaced_changed, this, &MainWindow::show_unplaced);
  connect(&session_, &Session::saved_changed, this, [this] {
    worksheet_->keep()->show_case();
    show_title();
  });
  connect(&session_, &Session::refused, this, [this](const QString& sentence) {
    // A refusal of tapes belongs beside the tapes, if they are in sight.
    if (worksheet_->current() == Worksheet::measure_index && session_.is_ready())
      worksheet_->measure()->set_problem(sentence);
    else
      show_notice(sentence);
  });
  connect(&session_, &Session::working, this,
          [this](const QString& what, double fraction) { work_->show_work(what, fraction); });
  connect(&session_, &Session::rested, this, [this] {
    if (!output_) work_->rest();
  });

  connect(&visit_, &Visit::changed, this, [this] {
    verdict_->show_check(visit_.check(), visit_.problem());
    // The next mark is asked for without another click.
    if (worksheet_->check()->wanted() == TodaysMark::site && visit_.mark(TodaysMark::site))
      worksheet_->check()->want(visit_.mark(TodaysMark::edge) ? std::nullopt
                                                              : std::optional(TodaysMark::edge));
    else if (worksheet_->check()->wanted() == TodaysMark::edge && visit_.mark(TodaysMark::edge))
      worksheet_->check()->want({});
    refresh_stage();
  });

  connect(worksheet_, &Worksheet::step_changed, this, [this] {
    const auto step = worksheet_->current();
    if (step != Worksheet::check_index) worksheet_->check()->want({});
    if (!coil_.in_hand()) {
      coil_ = {};
      if (step == Worksheet::search_index) coil_.on = CoilOn::start;
    }
    show_step();
  });
  connect(worksheet_->measure(), &MeasureStep::head_wanted, this, &MainWindow::open_head);
  connect(worksheet_->landmarks(), &LandmarksStep::system_chosen, this, [this] {
    other_landmarks_.reset();
    worksheet_->landmarks()->show_case();
    refresh_stage();
  });
  connect(worksheet_->landmarks(), &LandmarksStep::landmark_found, this, [this] {
    refresh_stage();
    if (const auto& found = worksheet_->landmarks()->found()) {
      // Turn until it faces the eye, up staying up.
      const auto& axes = session_.head().head.axes();
      const Eigen::Vector3d out = session_.head().head.skin().smooth_normal(found->on_skin);
      viewer::Gaze gaze;
      gaze.toward_eye = out;
      const Eigen::Vector3d up = std::abs(out.dot(axes.up)) > 0.97 ? axes.front : axes.up;
      gaze.up = (up - up.dot(out) * out).normalized();
      stage_->look_at(gaze);
    }
  });
  connect(worksheet_->landmarks(), &LandmarksStep::fiducial_wanted, this,
          [this] { face_fiducial(worksheet_->landmarks()->wanted()); });
  connect(worksheet_->landmarks(), &LandmarksStep::turn_wanted, this, &MainWindow::turn_bare_head);
  connect(worksheet_->search(), &SearchStep::node_wanted, this, [this](int row, int column) {
    HeldCoil coil;
    coil.on = CoilOn::node;
    coil.row = row;
    coil.column = column;
    lay_coil(coil);
  });
  connect(worksheet_->check(), &CheckStep::point_wanted, this,
          [this] { stage_->set_pointing(worksheet_->check()->wanted().has_value()); });
  connect(worksheet_->keep(), &KeepStep::save_wanted, this, [this] { save(); });
  connect(worksheet_->keep(), &KeepStep::sheet_wanted, this, &MainWindow::save_sheet);
  connect(worksheet_->keep(), &KeepStep::print_wanted, this, &MainWindow::print_sheet);
  connect(worksheet_->keep(), &KeepStep::picture_wanted, this, &MainWindow::save_picture);

  connect(stage_, &StageView::coil_moved, this, [this](const geometry::SurfacePoint& to) {
    if (const auto held =
            hold_coil(session_.head().head, session_.kept().entered, to, coil_.angle_deg, session_.tapes()))
      lay_coil(*held);
  });
  connect(stage_, &StageView::coil_turned, this, &MainWindow::turn_coil);
  connect(stage_, &StageView::coil_nudged, this, &MainWindow::nudge_coil);
  connect(stage_, &StageView::node_clicked, this, [this](int row, int column) {
    HeldCoil coil;
    coil.on = CoilOn::node;
    coil.row = row;
    coil.column = column;
    lay_coil(coil);
  });
  connect(stage_, &StageView::skin_pointed, this, &MainWindow::point_on_skin);
  connect(stage_, &StageView::fiducial_dragged, this,
          [this](Fiducial which, const Eigen::Vector3d& to) { session_.place(which, to); });
}

// --- showing

void MainWindow::show_session() {
  other_landmarks_.reset();
  // A coil in the hand stays where it is; what it is laid by may have changed.
  if (coil_.in_hand()) {
    const auto held =
        hold_coil(session_.head().head, session_.kept().entered, coil_.at, coil_.angle_deg, session_.tapes());
    coil_ = held.value_or(HeldCoil{});
  }
  worksheet_->show_case();
  if (std::exchange(fresh_head_, false))
    show_step();
  else
    refresh_stage();
  undo_->setEnabled(session_.history().can_undo());
  redo_->setEnabled(session_.history().can_redo());
  undo_->setText(session_.history().can_undo() ? tr("&Undo: %1").arg(session_.history().undo_name())
                                               : tr("&Undo"));
  redo_->setText(session_.history().can_redo() ? tr("&Redo: %1").arg(session_.history().redo_name())
                                               : tr("&Redo"));
  show_title();
  show_explain_heading();
}

void MainWindow::show_title() {
  QString name = session_.file().isEmpty() ? QString::fromStdString(session_.kept().entered.label)
                                           : QFileInfo(session_.file()).fileName();
  if (name.isEmpty()) name = tr("Unnamed case");
  setWindowTitle(tr("%1[*] - Scalpmark").arg(name));
  setWindowModified(!session_.is_saved());
}

void MainWindow::show_explain_heading() {
  const bool generic = session_.kept().head.kind == models::HeadKind::generic;
  const QString label = QString::fromStdString(session_.kept().entered.label);
  explain_->set_heading(label_in_explain_ && !label.isEmpty() ? label
                        : generic ? tr("A drawing of a head, shaped by a tape measure")
                                  : tr("A picture of a head, made from a scan"));
  explain_->set_brain_shown(session_.has_cortex());
}

void MainWindow::show_notice(const QString& sentence) {
  notice_->say(sentence);
}

// --- modes

QPushButton* MainWindow::mode_button(Mode mode) const {
  return qobject_cast<QPushButton*>(modes_->button(static_cast<int>(mode)));
}

void MainWindow::set_lesson(LessonParts lesson) {
  lesson_ = std::move(lesson);
  centre_row_->insertWidget(1, lesson_->panel);
  stage_column_->addWidget(lesson_->bar);
  lesson_->set_unit(unit_);
  mode_button(Mode::teach)->show();
  set_mode(mode_);
}

void MainWindow::set_mode(Mode mode) {
  const Mode before = std::exchange(mode_, mode);
  mode_button(mode)->setChecked(true);
  const bool explain = mode == Mode::explain;
  worksheet_->setVisible(mode == Mode::worksheet || mode == Mode::check);
  bar_->setVisible(!explain);
  menuBar()->setVisible(!explain);
  foot_->setVisible(!explain && mode != Mode::teach);
  explain_->setVisible(explain);
  verdict_->setVisible(mode == Mode::check);
  if (lesson_) {
    lesson_->panel->setVisible(mode == Mode::teach);
    lesson_->bar->setVisible(mode == Mode::teach);
  }
  stage_->set_type_scale(mode == Mode::teach ? lesson_type_scale : 1);
  stage_->set_focus_frame(!explain);  // nothing to do by keys in a picture for patients
  if ((mode == Mode::teach || explain) && worksheet_->check()->wanted()) worksheet_->check()->want({});
  if (explain && before != Mode::explain && isVisible()) {
    before_explain_ = windowState();
    showFullScreen();
  }
  if (!explain && before == Mode::explain) setWindowState(before_explain_);
  if (mode != before) show_notice({});  // it was about what was done before
  if (mode == Mode::check) worksheet_->go_to(Worksheet::check_index);
  if (explain && before != Mode::explain) want_cortex();
  if (!explain && before == Mode::explain) say_no_cortex();
  refresh_stage();
  if (mode != before) {
    QApplication::processEvents(QEventLoop::ExcludeUserInputEvents);  // the stage has its new size
    look_for_step();
  }
  if (explain) stage_->setFocus();
}

void MainWindow::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Escape) {
    if (mode_ == Mode::explain) {
      set_mode(Mode::worksheet);
    } else if (worksheet_->check()->wanted()) {
      worksheet_->check()->want({});
    } else if (coil_.in_hand()) {
      HeldCoil back;
      if (worksheet_->current() == Worksheet::search_index) back.on = CoilOn::start;
      lay_coil(back);
    }
    return;
  }
  QMainWindow::keyPressEvent(event);
}

void MainWindow::set_unit(LengthUnit unit) {
  unit_ = unit;
  worksheet_->set_unit(unit);
  if (lesson_) lesson_->set_unit(unit);
}

}  // namespace scalpmark::window
