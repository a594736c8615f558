#include <QDir>
#include <QScrollBar>
#include <cstdio>

#include "geometry/hands/cap_today.h"
#include "models/coils/coil_library.h"
#include "models/meshes/mesh_file.h"
#include "tests/viewer/window/hands_tour.h"
#include "tests/viewer/window/opened_window.h"
#include "tests/viewer/window/practise_tour.h"
#include "tests/viewer/window/tour.h"
#include "tests/viewer/window/tour_chair.h"
#include "tests/viewer/window/tour_settings.h"
#include "tests/viewer/window/visit_screens.h"
#include "viewer/window/frame/theme.h"

namespace scalpmark::window {

Tour::Tour(const QString& folder, QSize size) : folder_(folder), size_(size) {
  QDir().mkpath(folder);
  opened_.window.resize(size);
  QTest::qWait(50);
}

void Tour::run() {
  MainWindow& w = opened_.window;
  Worksheet& sheet = w.worksheet();
  const auto step = [&](Worksheet::StepIndex index, const char* name) {
    sheet.go_to(index);
    snap(name);
  };
  step(Worksheet::measure_index, "01-measure");
  sheet.measure()->nasion_inion()->edit()->setFocus();
  opened_.type(sheet.measure()->nasion_inion()->edit(), "99");
  snap("02-measure-bad-entry");
  QTest::keyClick(sheet.measure()->nasion_inion()->edit(), Qt::Key_Escape);
  opened_.type(sheet.measure()->nasion_inion()->edit(), "28");
  opened_.settle();
  snap("03-measure-tapes-disagree");
  w.session().start(demo_case());
  opened_.settle();
  step(Worksheet::landmarks_index, "04-landmarks");
  opened_.type(sheet.landmarks()->find(), "f4");
  snap("05-landmark-found");
  sheet.landmarks()->systems()->button(2)->click();
  snap("06-landmarks-10-5");
  sheet.landmarks()->systems()->button(1)->click();
  step(Worksheet::search_index, "07-search");
  sheet.search()->spots()->button(1, 1)->click();
  snap("08-search-spot");
  w.stage().look(viewer::View::left);
  snap("09-search-left");
  step(Worksheet::site_index, "10-site");
  sheet.site()->rule()->button(1)->click();
  snap("11-site-landmark");
  w.session().undo();
  w.stage().look(viewer::View::front_left);
  snap("12-site-front-left");
  step(Worksheet::check_index, "13-check-empty");
  const auto& skin = w.session().head().head.skin();
  const geometry::Placement treatment = w.session().plan().treatment;  // another plan may come meanwhile
  w.visit().set(TodaysMark::site, skin.closest(treatment.pulse + Eigen::Vector3d(2, 1, 0)));
  w.visit().set(TodaysMark::edge, skin.closest(*treatment.mark + Eigen::Vector3d(2, 1, 0)));
  snap("14-check-good");
  for (const auto& [which, at] :
       {std::pair(TodaysMark::site, treatment.pulse), std::pair(TodaysMark::edge, *treatment.mark)})
    w.visit().set(which, skin.closest(at - 15 * treatment.forward));
  snap("15-check-off");
  w.set_mode(Mode::check);
  snap("16-check-mode");
  w.set_mode(Mode::worksheet);
  step(Worksheet::save_index, "17-save");
  w.stage().look(viewer::View::above);
  snap("18-above");
  brain();
  w.resize(size_);
  another_head();
  in_the_dark();
  looked_into();
  cap();
  field();
  visits();
  lesson();
}

void Tour::visits() {
  for (const VisitScreen& screen : visit_screens()) {
    screen.go_there(opened_);
    snap(screen.name.c_str());
  }
}

void Tour::chair() {
  tour_chair(opened_, [this](const char* name) { snap(name); });
}

void Tour::another_head() {
  MainWindow& w = opened_.window;
  w.worksheet().search()->side()->button(1)->click();
  w.worksheet().go_to(Worksheet::search_index);
  snap("20-right-side");
  w.session().undo();
  const geometry::Surface skin = w.session().head().head.skin();
  const QString mesh = opened_.folder.filePath("scan.ply");
  models::write_ply(mesh.toStdString(), skin);
  w.files().open_path(mesh);
  opened_.settle();
  const auto known = w.session().head().head.fiducials().at;
  hover(known.nasion);
  snap("21-place-nasion");
  w.session().place(Fiducial::nasion, known.nasion);
  w.worksheet().landmarks()->want(Fiducial::inion);
  hover(known.inion);
  snap("22-place-inion");
  w.session().place(Fiducial::inion, known.inion);
  w.session().place(Fiducial::left_tragus, known.right_tragus);
  w.session().place(Fiducial::right_tragus, known.left_tragus);
  w.worksheet().landmarks()->want(Fiducial::left_tragus);
  snap("23-no-head");
  w.session().drop_unplaced();
  w.worksheet().go_to(Worksheet::save_index);
  w.output().save_picture_to(opened_.folder.filePath("stage.png"));
  OpenedWindow::wait_until([&] { return !w.output().is_writing(); });
  snap("24-saved");
  QTest::keyClick(&w, Qt::Key_P, Qt::ControlModifier);
  snap("25-no-printer");
  QTest::keyClick(&w, Qt::Key_Shift);  // Ctrl is let go
}

void Tour::in_the_dark() {
  MainWindow& w = opened_.window;
  apply_theme(*qApp, true);
  w.worksheet().go_to(Worksheet::search_index);
  snap("26-dark-search");
  w.worksheet().go_to(Worksheet::site_index);
  snap("27-dark-site");
  w.set_mode(Mode::check);
  snap("28-dark-check");
  w.set_mode(Mode::worksheet);
  apply_theme(*qApp, false);
}

void Tour::brain() {
  MainWindow& w = opened_.window;
  w.set_mode(Mode::explain);
  opened_.settle();
  QTest::qWait(200);
  snap("19-explain");
  w.set_mode(Mode::worksheet);
  QTest::qWait(200);
  w.resize(size_);
  w.set_skin_opacity(viewer::skin_over_cortex);
  for (const auto& [step, name] : {std::pair(Worksheet::measure_index, "70-brain-measure"),
                                   {Worksheet::landmarks_index, "71-brain-landmarks"},
                                   {Worksheet::search_index, "72-brain-search"},
                                   {Worksheet::site_index, "73-brain-site"},
                                   {Worksheet::save_index, "74-brain-save"}}) {
    w.worksheet().go_to(step);
    snap(name);
  }
  w.set_mode(Mode::check);
  snap("75-brain-check");
  w.set_mode(Mode::teach);
  snap("76-brain-teach");
  w.set_mode(Mode::worksheet);
  w.set_skin_opacity(1);
}

void Tour::run_mri() {
  const QString demo = QStringLiteral(SCALPMARK_SOURCE_DIR "/models/demo/template-mri.json");
  MainWindow& w = opened_.window;
  w.files().open_path(demo);
  QTest::qWait(100);
  snap("30-mri-loading");
  OpenedWindow::wait_until([&] { return w.session().case_file().head.kind == models::HeadKind::mri; });
  snap("31-mri-first-view");
  opened_.settle();
  if (w.session().case_file().head.kind != models::HeadKind::mri) return;
  for (const auto& [index, name] : {std::pair(Worksheet::measure_index, "32-mri-measure"),
                                    {Worksheet::landmarks_index, "33-mri-landmarks"},
                                    {Worksheet::search_index, "34-mri-search"},
                                    {Worksheet::site_index, "35-mri-site"}}) {
    w.worksheet().go_to(index);
    snap(name);
  }
  w.set_mode(Mode::explain);
  QTest::qWait(200);
  snap("36-mri-explain");
  w.set_mode(Mode::worksheet);
  QTest::qWait(200);
  w.resize(size_);
  w.output().save_sheet_to(folder_ + "/mri-sheet.pdf", viewer::Paper::a4);
  QTest::qWait(400);
  snap("37-mri-sheet-in-the-making");
  OpenedWindow::wait_until([&] { return !w.output().is_writing(); });
  snap("38-mri-sheet-saved");
}

void Tour::hover(const Eigen::Vector3d& at) {
  StageView& stage = opened_.window.stage();
  const QPoint there = stage.position_of(at).toPoint();
  QMouseEvent move(QEvent::MouseMove, there, stage.mapToGlobal(there), Qt::NoButton, Qt::NoButton,
                   Qt::NoModifier);
  QApplication::sendEvent(&stage, &move);
}

void Tour::snap(const char* name) {
  QTest::qWait(600);  // until the panel has its new layout
  const QImage shot = opened_.shot();
  const QString file = QStringLiteral("%1/%2-%3.png").arg(folder_).arg(size_.height()).arg(name);
  shot.save(file);
  std::printf("%s\n", qPrintable(file));
  say_mistaken(opened_.window, name);
}

}  // namespace scalpmark::window
