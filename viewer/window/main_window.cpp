#include "viewer/window/main_window.h"

#include <QApplication>
#include <QClipboard>
#include <QCloseEvent>
#include <QDir>
#include <QDragEnterEvent>
#include <QFileDialog>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QMenu>
#include <QMenuBar>
#include <QMessageBox>
#include <QMimeData>
#include <QWidgetAction>

#include "geometry/walk.h"
#include "models/embedded_data.h"
#include "viewer/palette.h"
#include "viewer/sheet/sheet.h"
#include "viewer/window/cautions.h"
#include "viewer/window/status_line.h"
#include "viewer/window/theme.h"

namespace scalpmark::window {

using viewer::CoilOn;
using viewer::Thing;
using viewer::View;

namespace {

constexpr double lesson_type_scale = 1.4;  // read from the back of a class room
constexpr double close_look_mm = 140;      // across the picture, for placing one of the four points

QString case_filter() {
  return MainWindow::tr("Cases (*.json)");
}
QString head_filter() {
  return MainWindow::tr("Heads (*.obj *.ply *.stl *.gltf *.glb *.nii *.nii.gz);;All files (*)");
}
QString open_filter() {
  return MainWindow::tr(
      "Cases and heads (*.json *.obj *.ply *.stl *.gltf *.glb *.nii *.nii.gz);;All files (*)");
}

struct ViewKey {
  View view;
  const char* name;
  int digit;
};
constexpr ViewKey view_keys[]{{View::front, QT_TRANSLATE_NOOP("MainWindow", "From the front"), 1},
                              {View::left, QT_TRANSLATE_NOOP("MainWindow", "From the patient's left"), 2},
                              {View::right, QT_TRANSLATE_NOOP("MainWindow", "From the patient's right"), 3},
                              {View::back, QT_TRANSLATE_NOOP("MainWindow", "From the back"), 4},
                              {View::above, QT_TRANSLATE_NOOP("MainWindow", "From above"), 5},
                              {View::square_on, QT_TRANSLATE_NOOP("MainWindow", "Square on the coil"), 6}};

}  // namespace

models::CaseFile demo_case() {
  for (const models::EmbeddedFile& file : models::embedded_files())
    if (file.name == "demo/bench-head.json")
      return models::parse_case(std::string(file.text), std::filesystem::current_path(), "the demo case");
  return models::default_case();
}

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

  ask_unsaved = [this] {
    QMessageBox box(QMessageBox::Question, tr("Unsaved changes"),
                    tr("The case has changes that are not saved."), QMessageBox::NoButton, this);
    auto* save = box.addButton(tr("Save"), QMessageBox::AcceptRole);
    auto* discard = box.addButton(tr("Discard the changes"), QMessageBox::DestructiveRole);
    box.addButton(tr("Keep working"), QMessageBox::RejectRole);
    box.setDefaultButton(save);
    box.exec();
    return box.clickedButton() == save      ? Answer::save
           : box.clickedButton() == discard ? Answer::discard
                                            : Answer::cancel;
  };
  ask_recover = [this](const Leftover& leftover) {
    QMessageBox box(
        QMessageBox::Question, tr("Unsaved work found"),
        tr("The program ended unexpectedly on %1 and kept this case: \u201c%2\u201d. Go on with it?")
            .arg(leftover.written, QString::fromStdString(leftover.kept.entered.label)),
        QMessageBox::NoButton, this);
    auto* yes = box.addButton(tr("Go on with it"), QMessageBox::AcceptRole);
    box.addButton(tr("Throw it away"), QMessageBox::DestructiveRole);
    box.setDefaultButton(yes);
    box.exec();
    return box.clickedButton() == yes;
  };

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

  notice_bar_ = new QWidget;
  notice_bar_->setObjectName("notice");
  notice_bar_->setAttribute(Qt::WA_StyledBackground);
  auto* notice_row = new QHBoxLayout(notice_bar_);
  notice_ = new QLabel;
  notice_->setWordWrap(true);
  notice_->setTextInteractionFlags(Qt::TextSelectableByMouse);
  auto* dismiss = new QPushButton(tr("Close"));
  dismiss->setAccessibleName(tr("Close this message"));
  notice_row->addWidget(notice_, 1);
  notice_row->addWidget(dismiss);
  connect(dismiss, &QPushButton::clicked, notice_bar_, &QWidget::hide);
  notice_bar_->hide();

  work_bar_ = new QWidget;
  work_bar_->setObjectName("workBar");
  work_bar_->setAttribute(Qt::WA_StyledBackground);
  auto* work_row = new QHBoxLayout(work_bar_);
  work_text_ = new QLabel;
  work_progress_ = new QProgressBar;
  work_progress_->setRange(0, 1000);
  work_progress_->setTextVisible(false);
  work_progress_->setFixedHeight(10);
  cancel_ = new QPushButton(tr("Cancel"));
  work_row->addWidget(work_text_);
  work_row->addWidget(work_progress_, 1);
  work_row->addWidget(cancel_);
  connect(cancel_, &QPushButton::clicked, this, [this] {
    session_.cancel();
    worksheet_->show_case();
  });
  work_bar_->hide();

  explain_bar_ = new QWidget;
  explain_bar_->setObjectName("verdictPanel");
  explain_bar_->setAttribute(Qt::WA_StyledBackground);
  auto* explain_row = new QHBoxLayout(explain_bar_);
  explain_row->setContentsMargins(40, 20, 24, 24);
  explain_text_ =
      new QLabel(tr("The flat coil rests gently on your head, and you hear it click. Each click sends a "
                    "short magnetic pulse "
                    "through the skin to the part of the brain under the green diamond, which is the place "
                    "your clinician has chosen."));
  explain_text_->setObjectName("explain");
  explain_text_->setWordWrap(true);
  auto* done = new QPushButton(tr("Done"));
  done->setToolTip(tr("Back to the worksheet (Esc)"));
  explain_row->addWidget(explain_text_, 1);
  explain_row->addWidget(done, 0, Qt::AlignBottom);
  connect(done, &QPushButton::clicked, this, [this] { set_mode(Mode::worksheet); });

  auto* right = new QWidget;
  stage_column_ = new QVBoxLayout(right);
  stage_column_->setContentsMargins(0, 0, 0, 0);
  stage_column_->setSpacing(0);
  stage_column_->addWidget(notice_bar_);
  stage_column_->addWidget(work_bar_);
  stage_column_->addWidget(stage_, 1);
  stage_column_->addWidget(verdict_);
  stage_column_->addWidget(explain_bar_);

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

void MainWindow::build_menus() {
  const auto add = [this](QMenu* menu, const QString& text, const QKeySequence& key, auto&& act) {
    auto* action = menu->addAction(text);
    action->setShortcut(key);
    connect(action, &QAction::triggered, this, act);
    return action;
  };
  QMenu* file = menuBar()->addMenu(tr("&File"));
  add(file, tr("&New case"), QKeySequence::New, [this] {
    if (!may_leave()) return;
    coil_ = {};
    session_.start(models::default_case());
  });
  add(file, tr("&Open\u2026"), QKeySequence::Open, [this] { open(); });
  recent_menu_ = file->addMenu(tr("&Recent"));
  file->addSeparator();
  save_action_ = add(file, tr("&Save"), QKeySequence::Save, [this] { save(); });
  add(file, tr("Save &as\u2026"), QKeySequence("Ctrl+Shift+S"), [this] { save_as(); });
  add(file, tr("Save a &picture\u2026"), QKeySequence("Ctrl+Shift+P"), [this] { save_picture(); });
  add(file, tr("Save a s&heet\u2026"), QKeySequence("Ctrl+P"), [this] { save_sheet(); });
  file->addSeparator();
  add(file, tr("&Quit"), QKeySequence("Ctrl+Q"), [this] { close(); });

  QMenu* edit = menuBar()->addMenu(tr("&Edit"));
  undo_ = add(edit, tr("&Undo"), QKeySequence::Undo, [this] { session_.undo(); });
  redo_ = add(edit, tr("&Redo"), QKeySequence("Ctrl+Shift+Z"), [this] { session_.redo(); });
  edit->addSeparator();
  add(edit, tr("&Copy picture"), QKeySequence("Ctrl+Shift+C"), [this] { copy_picture(); });

  QMenu* view = menuBar()->addMenu(tr("&View"));
  for (const ViewKey& each : view_keys) {
    auto* action = add(view, tr(each.name), QKeySequence(QString::number(each.digit)),
                       [this, each] { stage_->look(each.view); });
    // A digit typed into a field is a digit.
    action->setShortcutContext(Qt::WidgetShortcut);
    stage_->addAction(action);
    auto* anywhere = new QAction(this);
    anywhere->setShortcut(QKeySequence(QStringLiteral("Alt+%1").arg(each.digit)));
    connect(anywhere, &QAction::triggered, action, &QAction::trigger);
    addAction(anywhere);
  }
  view->addSeparator();
  QMenu* lay = view->addMenu(tr("Lay the coil &on"));
  const auto lay_on = [this](CoilOn on) {
    return [this, on] {
      HeldCoil coil;
      coil.on = on;
      lay_coil(coil);
    };
  };
  add(lay, tr("the treatment site"), QKeySequence("Ctrl+T"), lay_on(CoilOn::treatment));
  add(lay, tr("the hotspot"), QKeySequence("Ctrl+H"), lay_on(CoilOn::hotspot));
  add(lay, tr("the search start"), QKeySequence("Ctrl+B"), lay_on(CoilOn::start));
  view->addSeparator();
  auto* opacity = new QWidget;
  auto* opacity_row = new QHBoxLayout(opacity);
  opacity_row->setContentsMargins(28, 4, 12, 4);
  auto* opacity_label = new QLabel(tr("Skin"));
  auto* slider = new QSlider(Qt::Horizontal);
  slider->setRange(20, 100);
  slider->setValue(100);
  slider->setAccessibleName(tr("Skin opacity in percent"));
  opacity_label->setBuddy(slider);
  opacity_row->addWidget(opacity_label);
  opacity_row->addWidget(slider, 1);
  auto* opacity_action = new QWidgetAction(view);
  opacity_action->setDefaultWidget(opacity);
  view->addAction(opacity_action);
  connect(slider, &QSlider::valueChanged, this, [this](int percent) {
    skin_opacity_ = percent / 100.0;
    refresh_stage();
  });
  const auto toggle = [&](const QString& text, bool on, auto&& act) {
    auto* action = view->addAction(text);
    action->setCheckable(true);
    action->setChecked(on);
    connect(action, &QAction::toggled, this, act);
    return action;
  };
  toggle(tr("&Legend"), legend_, [this](bool on) {
    legend_ = on;
    refresh_stage();
  });
  toggle(tr("&Numbers on the stage"), numbers_, [this](bool on) {
    numbers_ = on;
    refresh_stage();
  });
  view->addSeparator();
  toggle(tr("Lengths in &inches"), settings_.unit == LengthUnit::inch, [this](bool on) {
    set_unit(on ? LengthUnit::inch : LengthUnit::centimetre);
    settings_.unit = on ? LengthUnit::inch : LengthUnit::centimetre;
    settings_.write();
  });
  toggle(tr("&Dark"), settings_.dark, [this](bool on) {
    apply_theme(*qApp, on);
    settings_.dark = on;
    settings_.write();
  });
  toggle(tr("&Glide between views"), settings_.animated, [this](bool on) {
    stage_->set_animated(on);
    settings_.animated = on;
    settings_.write();
  });
  add(view, tr("&Full screen"), QKeySequence(Qt::Key_F11),
      [this] { isFullScreen() ? showNormal() : showFullScreen(); });

  QMenu* help = menuBar()->addMenu(tr("&Help"));
  add(help, tr("&Keys"), QKeySequence(Qt::Key_F1), [this] { show_keys(); });
  add(help, tr("Cautions and &about"), QKeySequence(), [this] { show_about(); });
  show_recent();
}

void MainWindow::connect_all() {
  connect(&session_, &Session::head_changed, this, [this] {
    coil_ = {};
    fresh_head_ = true;
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
  connect(&session_, &Session::working, this, [this](const QString& what, double fraction) {
    work_text_->setText(what);
    work_progress_->setValue(static_cast<int>(1000 * fraction));
    work_bar_->show();
  });
  connect(&session_, &Session::rested, work_bar_, &QWidget::hide);

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
    refresh_stage();
    look_for_step();
  });
  connect(worksheet_->measure(), &MeasureStep::head_wanted, this, &MainWindow::open_head);
  connect(worksheet_->landmarks(), &LandmarksStep::system_chosen, this, [this] {
    plan_with_landmarks_.reset();
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
  connect(worksheet_->keep(), &KeepStep::picture_wanted, this, &MainWindow::save_picture);

  connect(stage_, &StageView::coil_moved, this, [this](const geometry::SurfacePoint& to) {
    if (const auto held = hold_coil(session_.head().head, session_.kept().entered, to, coil_.angle_deg))
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
  plan_with_landmarks_.reset();
  // A coil in the hand stays where it is; what it is laid by may have changed.
  if (coil_.in_hand()) {
    const auto held = hold_coil(session_.head().head, session_.kept().entered, coil_.at, coil_.angle_deg);
    coil_ = held.value_or(HeldCoil{});
  }
  worksheet_->show_case();
  refresh_stage();
  if (std::exchange(fresh_head_, false)) look_for_step();
  undo_->setEnabled(session_.history().can_undo());
  redo_->setEnabled(session_.history().can_redo());
  undo_->setText(session_.history().can_undo() ? tr("&Undo: %1").arg(session_.history().undo_name())
                                               : tr("&Undo"));
  redo_->setText(session_.history().can_redo() ? tr("&Redo: %1").arg(session_.history().redo_name())
                                               : tr("&Redo"));
  show_title();
}

viewer::Shown MainWindow::shown_now() const {
  viewer::Shown shown;
  shown.coil_on = coil_.on;
  shown.row = coil_.row;
  shown.column = coil_.column;
  shown.placement = coil_.placement;
  shown.head_description = session_.head().description;
  shown.skin_opacity = skin_opacity_;
  std::set<Thing> things{Thing::skin, Thing::labels};
  const auto with = [&](std::initializer_list<Thing> more) { things.insert(more.begin(), more.end()); };
  if (mode_ == Mode::explain) {
    shown.things = {Thing::skin, Thing::treatment, Thing::coil};
    return shown;
  }
  switch (mode_ == Mode::check ? Worksheet::check_index : worksheet_->current()) {
    case Worksheet::measure_index:
      with({Thing::tapes});
      break;
    case Worksheet::landmarks_index:
      with({Thing::landmarks, Thing::tapes});
      break;
    case Worksheet::search_index:
      with({Thing::grid, Thing::start, Thing::coil, Thing::angle, Thing::edge_marks, Thing::tapes});
      break;
    case Worksheet::treat_index:
      with({Thing::hotspot, Thing::treatment, Thing::alternatives, Thing::coil, Thing::angle,
            Thing::edge_marks});
      break;
    case Worksheet::check_index:
      with({Thing::treatment, Thing::coil, Thing::angle, Thing::edge_marks});
      if (visit_.check()) {
        shown.coil_on = CoilOn::elsewhere;
        shown.placement = visit_.check()->as_laid;
      }
      break;
    case Worksheet::keep_index:
      with({Thing::landmarks, Thing::grid, Thing::start, Thing::hotspot, Thing::treatment, Thing::coil,
            Thing::angle, Thing::edge_marks});
      break;
  }
  const bool coil = things.contains(Thing::coil);
  if (numbers_ && coil) things.insert(Thing::numbers);
  if (legend_ && coil) things.insert(Thing::legend);
  shown.things = std::move(things);
  return shown;
}

std::vector<StageNote> MainWindow::notes_now() const {
  std::vector<StageNote> notes;
  if (mode_ == Mode::explain) return notes;
  const geometry::Surface& skin = session_.head().head.skin();
  if (mode_ == Mode::check || worksheet_->current() == Worksheet::check_index) {
    const auto add = [&](TodaysMark which, viewer::Shape shape, viewer::Colour colour, const QString& text) {
      if (const auto& mark = visit_.mark(which)) {
        StageNote note;
        note.shape = shape;
        note.colour = colour;
        note.at = skin.position(*mark);
        if (visit_.check()) note.along = visit_.check()->as_laid.front.cross(visit_.check()->as_laid.normal);
        note.text = text;
        notes.push_back(note);
      }
    };
    add(TodaysMark::site, viewer::Shape::ring, viewer::okabe_ito::black, tr("today's site mark"));
    add(TodaysMark::edge, viewer::Shape::bar, viewer::okabe_ito::black, tr("today's edge mark"));
  } else if (worksheet_->current() == Worksheet::landmarks_index) {
    if (const auto& found = worksheet_->landmarks()->found()) {
      StageNote note;
      note.shape = viewer::Shape::ring;
      note.colour = viewer::palette::edge_mark;
      note.at = found->at;
      note.text = QString::fromStdString(found->name);
      notes.push_back(note);
    }
  }
  return notes;
}

void MainWindow::refresh_stage() {
  if (session_.unplaced()) {
    status_->clear();
    stage_->show_bare(*session_.unplaced());
    return;
  }
  if (!session_.is_ready()) return;
  if (mode_ == Mode::teach && lesson_) {
    LessonStage lesson = lesson_->stage(session_);
    lesson.shown.skin_opacity = skin_opacity_;
    stage_->show_plan(session_.head().head, session_.kept().entered, lesson.plan, lesson.shown,
                      std::move(lesson.notes));
    stage_->set_coil_movable(false);
    return;
  }
  const viewer::Shown shown = shown_now();
  const geometry::Plan* plan = &session_.plan();
  if (worksheet_->current() == Worksheet::landmarks_index &&
      worksheet_->landmarks()->system() != geometry::LandmarkSystem::ten_ten) {
    if (!plan_with_landmarks_) {
      plan_with_landmarks_ = *plan;
      plan_with_landmarks_->landmarks =
          geometry::landmarks(session_.head().head, worksheet_->landmarks()->system());
    }
    plan = &*plan_with_landmarks_;
  }
  stage_->show_plan(session_.head().head, session_.kept().entered, *plan, shown, notes_now());
  stage_->set_coil_movable(mode_ != Mode::explain &&
                           !(shown.coil_on == CoilOn::elsewhere && !coil_.in_hand()));
  worksheet_->search()->show_node(coil_.on == CoilOn::node
                                      ? std::optional(geometry::HotspotNode{coil_.row, coil_.column})
                                  : coil_.on == CoilOn::start ? std::optional(geometry::HotspotNode{0, 0})
                                                              : std::nullopt);
  const geometry::Placement& placement = viewer::placement_shown(*plan, shown);
  from_site_mm_ = pulse_from_site_mm(session_.head().head.skin(), session_.plan(), placement);
  status_->setText(status_line(from_site_mm_, placement, session_.kept().entered.coil.mark_rule));
}

void MainWindow::show_title() {
  QString name = session_.file().isEmpty() ? QString::fromStdString(session_.kept().entered.label)
                                           : QFileInfo(session_.file()).fileName();
  if (name.isEmpty()) name = tr("Unnamed case");
  setWindowTitle(tr("%1[*] - Scalpmark").arg(name));
  setWindowModified(!session_.is_saved());
}

void MainWindow::show_notice(const QString& sentence) {
  notice_->setText(sentence);
  notice_bar_->setVisible(!sentence.isEmpty());
}

void MainWindow::look_for_step() {
  if (!session_.is_ready() || session_.unplaced()) return;
  if (mode_ == Mode::teach && lesson_) {
    lesson_->look();
    return;
  }
  const bool left = session_.kept().entered.side == geometry::Side::left;
  if (mode_ == Mode::explain) {
    stage_->look(left ? View::front_left : View::front);
    return;
  }
  switch (worksheet_->current()) {
    case Worksheet::measure_index:
    case Worksheet::landmarks_index:
      stage_->look(left ? View::front_left : View::right);
      break;
    case Worksheet::search_index:
    case Worksheet::treat_index:
    case Worksheet::check_index:
      stage_->look(View::square_on);
      break;
    case Worksheet::keep_index:
      stage_->look(left ? View::left : View::right);
      break;
  }
}

void MainWindow::lay_coil(const HeldCoil& coil) {
  if (!session_.is_ready()) return;
  coil_ = coil;
  refresh_stage();
}

void MainWindow::turn_coil(double by_deg) {
  if (!session_.is_ready()) return;
  const geometry::Placement& now = placement_of(session_.plan(), coil_);
  const auto& head = session_.head().head;
  double angle = now.angle_deg + by_deg;
  if (angle > 180) angle -= 360;
  if (angle < -180) angle += 360;
  const geometry::SurfacePoint at = coil_.in_hand() ? coil_.at : head.skin().closest(now.pulse);
  if (const auto held = hold_coil(head, session_.kept().entered, at, angle)) lay_coil(*held);
}

void MainWindow::nudge_coil(double forward_mm, double outward_mm) {
  if (!session_.is_ready()) return;
  const geometry::Placement& now = placement_of(session_.plan(), coil_);
  const auto& head = session_.head().head;
  const geometry::SurfacePoint at = coil_.in_hand() ? coil_.at : head.skin().closest(now.pulse);
  const geometry::Directions ways = geometry::directions_at(head, session_.kept().entered.side, at);
  const Eigen::Vector3d way = forward_mm * ways.forward + outward_mm * ways.outward;
  try {
    const geometry::Walk walk = geometry::walk(head.skin(), at, way.normalized(), way.norm());
    const auto angle = coil_.in_hand() ? coil_.angle_deg : std::nullopt;
    if (const auto held = hold_coil(head, session_.kept().entered, walk.end, angle)) lay_coil(*held);
  } catch (const std::exception& error) {
    show_notice(QString::fromUtf8(error.what()));
  }
}

// --- placing the four points

void MainWindow::show_unplaced() {
  mode_button(Mode::teach)->setEnabled(!session_.unplaced());  // no lesson on a head without its points
  worksheet_->show_case();
  if (session_.unplaced()) {
    const auto& placed = session_.unplaced()->placed;
    const bool fresh = !stage_->is_bare();
    refresh_stage();
    stage_->set_pointing(true);
    if (fresh) {
      set_mode(Mode::worksheet);  // the points are placed from there
      worksheet_->go_to(Worksheet::landmarks_index);
      bare_up_ = 0;
      const bool none =
          std::none_of(placed.begin(), placed.end(), [](const auto& p) { return p.has_value(); });
      if (none && session_.unplaced()->source.kind == models::HeadKind::mesh) {
        const auto extension = session_.unplaced()->source.file.extension();
        if (extension == ".glb" || extension == ".gltf")
          bare_up_ = 1;  // these stand along y by their standard
      }
      worksheet_->landmarks()->want(Fiducial::nasion);
    }
  } else {
    stage_->set_pointing(worksheet_->check()->wanted().has_value());
    refresh_stage();
    look_for_step();
  }
}

namespace {

// Ways a head may stand in its file: up and front.
struct Standing {
  Eigen::Vector3d up, front;
};
std::vector<Standing> standings() {
  const Eigen::Vector3d x = Eigen::Vector3d::UnitX(), y = Eigen::Vector3d::UnitY(),
                        z = Eigen::Vector3d::UnitZ();
  return {{z, y}, {y, z},  {z, -y}, {y, -z}, {z, x}, {z, -x},
          {y, x}, {y, -x}, {-z, y}, {-y, z}, {x, y}, {-x, y}};
}

}  // namespace

void MainWindow::face_fiducial(Fiducial which) {
  if (!session_.unplaced()) return;
  const UnplacedHead& head = *session_.unplaced();
  const Standing standing = standings()[static_cast<std::size_t>(bare_up_)];
  const Eigen::Vector3d right = standing.front.cross(standing.up);
  viewer::Gaze gaze;
  switch (which) {
    case Fiducial::nasion:
      gaze = {standing.front, standing.up};
      break;
    case Fiducial::inion:
      gaze = {-standing.front, standing.up};
      break;
    case Fiducial::left_tragus:
      gaze = {-right, standing.up};
      break;
    case Fiducial::right_tragus:
      gaze = {right, standing.up};
      break;
  }
  const auto& at = head.placed[static_cast<std::size_t>(which)];
  if (at)
    stage_->look_at(gaze, at, close_look_mm);
  else
    stage_->look_at(gaze);
}

void MainWindow::turn_bare_head() {
  bare_up_ = (bare_up_ + 1) % static_cast<int>(standings().size());
  face_fiducial(worksheet_->landmarks()->wanted());
}

void MainWindow::point_on_skin(const Eigen::Vector3d& at) {
  if (session_.unplaced()) {
    LandmarksStep* step = worksheet_->landmarks();
    const Fiducial which = step->wanted();
    session_.place(which, at);
    if (!session_.unplaced()) return;
    // On to the next one that is missing.
    for (const Fiducial next : all_fiducials)
      if (!session_.unplaced()->placed[static_cast<std::size_t>(next)]) {
        step->want(next);
        return;
      }
    step->show_case();
    return;
  }
  if (const auto wanted = worksheet_->check()->wanted(); wanted && session_.is_ready())
    visit_.set(*wanted, session_.head().head.skin().closest(at));
}

// --- modes

QPushButton* MainWindow::mode_button(Mode mode) const {
  return qobject_cast<QPushButton*>(modes_->button(static_cast<int>(mode)));
}

void MainWindow::set_lesson(LessonParts lesson) {
  lesson_ = std::move(lesson);
  centre_row_->insertWidget(1, lesson_->panel);
  stage_column_->addWidget(lesson_->bar);
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
  explain_bar_->setVisible(explain);
  verdict_->setVisible(mode == Mode::check);
  if (lesson_) {
    lesson_->panel->setVisible(mode == Mode::teach);
    lesson_->bar->setVisible(mode == Mode::teach);
  }
  stage_->set_type_scale(mode == Mode::teach ? lesson_type_scale : 1);
  stage_->set_focus_frame(!explain);  // nothing to do by keys in a picture for patients
  if ((mode == Mode::teach || explain) && worksheet_->check()->wanted()) worksheet_->check()->want({});
  if (explain && before != Mode::explain && isVisible()) showFullScreen();
  if (!explain && before == Mode::explain) showNormal();
  if (mode == Mode::check) worksheet_->go_to(Worksheet::check_index);
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
  worksheet_->set_unit(unit);
}

// --- files

void MainWindow::begin(const QString& path) {
  if (!settings_.cautions_seen) {
    QMessageBox box(QMessageBox::Information, tr("Before you start"), cautions_text(), QMessageBox::NoButton,
                    this);
    box.setTextFormat(Qt::RichText);
    box.addButton(tr("I have read this"), QMessageBox::AcceptRole);
    box.exec();
    settings_.cautions_seen = true;
    settings_.write();
  }
  if (path.isEmpty()) {
    for (const Leftover& leftover : session_.recovery().leftovers()) {
      const bool yes = ask_recover(leftover);
      if (yes) session_.recover(leftover);
      Recovery::discard(leftover);
      if (yes) return;
    }
    session_.start(demo_case());
  } else {
    open_path(path);
    if (!session_.is_ready() && !session_.is_working()) session_.start(demo_case());
  }
}

void MainWindow::open_path(const QString& path) {
  show_notice({});
  const QString problem = session_.open(path);
  if (!problem.isEmpty()) {
    show_notice(problem);
    return;
  }
  if (path.endsWith(QLatin1String(".json"), Qt::CaseInsensitive)) {
    settings_.used(QFileInfo(path).absoluteFilePath());
    settings_.write();
    show_recent();
  }
}

bool MainWindow::may_leave() {
  if (session_.is_saved() || !session_.is_ready()) return true;
  switch (ask_unsaved()) {
    case Answer::save:
      return save();
    case Answer::discard:
      return true;
    case Answer::cancel:
      break;
  }
  return false;
}

void MainWindow::open() {
  if (!may_leave()) return;
  const QString path = QFileDialog::getOpenFileName(this, tr("Open a case or a head"), {}, open_filter());
  if (!path.isEmpty()) open_path(path);
}

void MainWindow::open_head() {
  const QString path = QFileDialog::getOpenFileName(this, tr("Open a head"), {}, head_filter());
  if (!path.isEmpty()) open_path(path);
}

bool MainWindow::save_to(const QString& path) {
  const QString problem = session_.save(path);
  show_notice(problem);
  if (!problem.isEmpty()) return false;
  settings_.used(session_.file());
  settings_.write();
  show_recent();
  return true;
}

bool MainWindow::save() {
  return session_.file().isEmpty() ? save_as() : save_to(session_.file());
}

bool MainWindow::save_as() {
  QString path = QFileDialog::getSaveFileName(this, tr("Save the case"), session_.file(), case_filter());
  if (path.isEmpty()) return false;
  if (!path.endsWith(QLatin1String(".json"), Qt::CaseInsensitive)) path += QStringLiteral(".json");
  return save_to(path);
}

void MainWindow::save_picture() {
  QString path = QFileDialog::getSaveFileName(this, tr("Save a picture"), {}, tr("Pictures (*.png)"));
  if (path.isEmpty()) return;
  if (!path.endsWith(QLatin1String(".png"), Qt::CaseInsensitive)) path += QStringLiteral(".png");
  if (!stage_->picture().save(path, "PNG"))
    show_notice(tr("The picture could not be written to %1; choose another folder.")
                    .arg(QDir::toNativeSeparators(path)));
}

void MainWindow::save_sheet() {
  if (!session_.is_ready()) return;
  const QString a4 = tr("Sheet on A4 (*.pdf)"), letter = tr("Sheet on Letter (*.pdf)");
  QString chosen = a4;
  QString path = QFileDialog::getSaveFileName(this, tr("Save a sheet"), {}, a4 + ";;" + letter, &chosen);
  if (path.isEmpty()) return;
  if (!path.endsWith(QLatin1String(".pdf"), Qt::CaseInsensitive)) path += QStringLiteral(".pdf");
  QApplication::setOverrideCursor(Qt::WaitCursor);
  QString problem;
  try {
    viewer::write_sheet(path.toStdString(), session_.kept(), session_.head(), session_.plan(),
                        chosen == letter ? viewer::Paper::letter : viewer::Paper::a4);
  } catch (const std::exception& error) {
    problem = QString::fromUtf8(error.what());
  }
  QApplication::restoreOverrideCursor();
  show_notice(problem);
}

void MainWindow::copy_picture() {
  QApplication::clipboard()->setImage(stage_->picture());
}

void MainWindow::show_recent() {
  recent_menu_->clear();
  for (const QString& file : settings_.recent) {
    auto* action = recent_menu_->addAction(QDir::toNativeSeparators(file));
    connect(action, &QAction::triggered, this, [this, file] {
      if (may_leave()) open_path(file);
    });
  }
  recent_menu_->setEnabled(!settings_.recent.isEmpty());
}

void MainWindow::closeEvent(QCloseEvent* event) {
  if (!may_leave()) {
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
  if (urls.size() != 1 || !urls.front().isLocalFile()) return;
  const QString path = urls.front().toLocalFile();
  // A head is an edit of the case; another case replaces it.
  if (!path.endsWith(QLatin1String(".json"), Qt::CaseInsensitive) || may_leave()) open_path(path);
}

void MainWindow::show_about() {
  QMessageBox box(
      QMessageBox::NoIcon, tr("About Scalpmark"),
      tr("<h3>Scalpmark %1</h3>").arg(QStringLiteral(SCALPMARK_VERSION)) + cautions_text() +
          tr("<p>Built with Qt, VTK, Eigen, Assimp and nlohmann-json, each under its own licence; on "
             "Debian see /usr/share/doc.</p>"),
      QMessageBox::Close, this);
  box.setTextFormat(Qt::RichText);
  box.exec();
}

void MainWindow::show_keys() {
  const std::pair<QString, QString> rows[]{
      {tr("1 to 6 on the stage, Alt+1 to Alt+6 anywhere"),
       tr("front, left, right, back, above, square on the coil")},
      {tr("Drag the coil"), tr("moves it over the skin")},
      {tr("Left, Right; Ctrl and wheel"), tr("turn the coil by 1\u00b0 (with Shift 5\u00b0)")},
      {tr("Ctrl and arrows"), tr("move the coil by 1 mm (with Shift 5 mm)")},
      {tr("Click a node"), tr("lays the coil on it")},
      {tr("Esc"), tr("puts the coil back, takes an entry back, leaves Explain")},
      {tr("Drag beside the coil; Alt and arrows"), tr("turn the head")},
      {tr("Right drag; Shift and drag"), tr("shift the picture")},
      {tr("Wheel; + and -"), tr("zoom")},
      {tr("Up, Down in a field"), tr("a little more, a little less")},
      {tr("Ctrl and a step's heading"), tr("opens it and leaves the others open")},
      {tr("Ctrl+T, Ctrl+H, Ctrl+B"), tr("lay the coil on the treatment site, the hotspot, the search start")},
      {tr("Ctrl+Z, Ctrl+Shift+Z"), tr("undo, redo")}};
  QString text = QStringLiteral("<table cellpadding=4>");
  for (const auto& [keys, what] : rows)
    text += QStringLiteral("<tr><td><b>%1</b></td><td>%2</td></tr>").arg(keys, what);
  QMessageBox box(QMessageBox::NoIcon, tr("Keys"), text + QStringLiteral("</table>"), QMessageBox::Close,
                  this);
  box.setTextFormat(Qt::RichText);
  box.exec();
}

}  // namespace scalpmark::window
