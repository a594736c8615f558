#include <QDir>
#include <QPainter>
#include <QScrollBar>
#include <cstdio>

#include "geometry/hands/cap_today.h"
#include "models/coils/coil_library.h"
#include "models/meshes/mesh_file.h"
#include "tests/viewer/window/hands_tour.h"
#include "tests/viewer/window/opened_window.h"
#include "tests/viewer/window/practise_tour.h"
#include "tests/viewer/window/tour_chair.h"
#include "tests/viewer/window/tour_settings.h"
#include "tests/viewer/window/visit_screens.h"
#include "viewer/window/frame/theme.h"

// Walks through every screen and saves each as a picture, so that people can look at all of them in one go.
// usage: window_tour [FOLDER [lesson|contact|brain|cap|visit|hands|chair|practise|every [SETTING]]]; with
// "lesson" the lesson's screens alone, with "contact" those of the gap under the coil and of how far off
// hands are, with "brain" those that show a brain under the skin, with "cap" those of the cap, with "visit"
// those of a visit and a course, with "hands" those of hands_tour.h, with "chair" those of tour_chair.h, with
// "practise" those of an exercise, with "every" those of every_screen.h in three sizes and both themes, or in
// one SETTING of tour_settings.h. Says which label stands over another's symbol, and fails if one does.

using namespace scalpmark;
using namespace scalpmark::window;

namespace {

class Tour {
public:
  Tour(const QString& folder, QSize size) : folder_(folder), size_(size) {
    QDir().mkpath(folder);
    opened_.window.resize(size);
    QTest::qWait(50);
  }

  void run() {
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

  void visits() {
    for (const VisitScreen& screen : visit_screens()) {
      screen.go_there(opened_);
      snap(screen.name.c_str());
    }
  }

  void chair() {
    tour_chair(opened_, [this](const char* name) { snap(name); });
  }

  /// The right side, and a scan whose four points are still to be placed.
  void another_head() {
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

  void in_the_dark() {
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

  /// What lies under each coil, on both sides, and how far off hands are.
  void looked_into() {
    MainWindow& w = opened_.window;
    w.set_gaps(true);
    const auto found = [&] {
      OpenedWindow::wait_until([&] { return w.under_coil().gaps() != nullptr; });
      QTest::qWait(30);
    };
    int number = 90;
    for (const geometry::Side side : {geometry::Side::left, geometry::Side::right})
      for (const geometry::Coil& coil : models::coils()) {
        w.session().change("Coil", [&](models::CaseFile& case_file) {
          case_file.the_case.side = side;
          case_file.the_case.coil.model = coil;
          case_file.the_case.coil.centre_to_edge_mm = coil.centre_to_edge_mm;
        });
        opened_.settle();
        w.worksheet().go_to(Worksheet::site_index);
        w.stage().look(viewer::View::square_on);
        found();
        snap(QStringLiteral("%1-gaps-%2").arg(number++).arg(QString::fromStdString(coil.model)).toLatin1());
      }
    w.stage().look(viewer::View::front_right);
    snap("98-gaps-front-right");
    w.worksheet().go_to(Worksheet::search_index);
    found();
    snap("98-gaps-search");
    w.worksheet().go_to(Worksheet::check_index);
    w.set_gaps(false);
    TolerancePanel& panel = *w.worksheet().check()->tolerance();
    panel.fold()->click();
    QTest::qWait(900);
    w.worksheet().ensureWidgetVisible(panel.error(3));
    snap("99-by-hand-working");
    OpenedWindow::wait_until([&] { return w.by_hand().found() != nullptr; });
    QTest::qWait(300);
    w.worksheet().ensureWidgetVisible(panel.error(8));
    snap("99-by-hand");
    w.stage().look(viewer::View::left);
    w.worksheet().verticalScrollBar()->setValue(100000);
    snap("99-by-hand-end");
    apply_theme(*qApp, true);
    snap("99-by-hand-dark");
    w.worksheet().go_to(Worksheet::site_index);
    w.set_gaps(true);
    found();
    snap("99-gaps-dark");
    w.set_gaps(false);
    w.worksheet().go_to(Worksheet::check_index);
    apply_theme(*qApp, false);
    panel.fold()->click();
    while (w.session().history().can_undo()) w.session().undo();
    opened_.settle();
  }

  void brain() {
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

  /// The induced field, on sphere and brain, on both sides, under each coil; its lessons and what-ifs.
  void field() {
    MainWindow& w = opened_.window;
    w.set_field(true);
    int number = 100;
    for (const geometry::Side side : {geometry::Side::left, geometry::Side::right})
      for (const geometry::Coil& coil : models::coils()) {
        w.session().change("Coil", [&](models::CaseFile& case_file) {
          case_file.the_case.side = side;
          case_file.the_case.coil.model = coil;
          case_file.the_case.coil.centre_to_edge_mm = coil.centre_to_edge_mm;
        });
        opened_.settle();
        w.worksheet().go_to(Worksheet::site_index);
        w.stage().look(number % 2 == 0 ? viewer::View::square_on : viewer::View::front_left);
        snap(QStringLiteral("%1-field-%2").arg(number++).arg(QString::fromStdString(coil.model)).toLatin1());
      }
    while (w.session().history().can_undo()) w.session().undo();
    opened_.settle();
    w.stage().look(viewer::View::right);
    snap("108-field-from-behind");
    w.set_skin_opacity(viewer::skin_over_cortex);
    opened_.settle();
    w.stage().look(viewer::View::front_left);
    snap("109-field-brain");
    w.set_mode(Mode::explain);
    opened_.settle();
    snap("110-field-explain");
    w.set_mode(Mode::worksheet);
    QTest::qWait(200);
    w.resize(size_);
    w.set_skin_opacity(1);
    w.set_field(false);
    w.set_mode(Mode::teach);
    opened_.teach.player().go_to(9);
    snap("111-field-gap");
    opened_.teach.player().go_to(10);
    snap("112-field-angle");
    WhatIfControls& what_if = *opened_.teach.panel().what_if();
    what_if.button(WhatIfControls::off)->click();
    snap("113-field-what-if-gap");
    what_if.off_how()->button(1)->click();
    snap("114-field-what-if-wing");
    what_if.button(WhatIfControls::turned)->click();
    what_if.turned_about()->button(1)->click();
    snap("115-field-what-if-turned");
    what_if.clear();
    w.set_mode(Mode::worksheet);
  }

  void lesson() {
    opened_.window.set_mode(Mode::teach);
    lesson_steps("40-lesson");
    WhatIfControls& what_if = *opened_.teach.panel().what_if();
    const auto spoil = [&](WhatIfControls::Kind kind, const char* name) {
      what_if.button(kind)->click();
      snap(name);
    };
    spoil(WhatIfControls::vertex, "51-what-if-vertex");
    spoil(WhatIfControls::tape, "52-what-if-tape");
    spoil(WhatIfControls::turned, "53-what-if-turned");
    opened_.type(what_if.turned_by()->edit(), "900");
    snap("54-what-if-bad-entry");
    QTest::keyClick(what_if.turned_by()->edit(), Qt::Key_Escape);
    spoil(WhatIfControls::rule, "55-what-if-rule");
    opened_.window.session().change(
        "Side", [](models::CaseFile& case_file) { case_file.the_case.side = geometry::Side::right; });
    snap("56-what-if-right-side");
    what_if.button(WhatIfControls::vertex)->click();
    what_if.vertex_way()->button(3)->click();
    snap("57-what-if-vertex-right-side");
    opened_.teach.player().go_to(0);
    lesson_steps("60-lesson-right");
    opened_.window.session().undo();
    opened_.window.set_mode(Mode::worksheet);
  }

  /// The cap as it is to be worn, and as it sits today after a slip, on both sides and in both units.
  void cap() {
    MainWindow& w = opened_.window;
    Worksheet& sheet = w.worksheet();
    for (const geometry::Side side : {geometry::Side::left, geometry::Side::right}) {
      const bool left = side == geometry::Side::left;
      w.session().change("Cap", [&](models::CaseFile& case_file) {
        case_file.the_case.side = side;
        case_file.the_case.cap.brim_over_nasion_mm = left ? 20 : 25;
      });
      opened_.settle();
      sheet.set_unit(left ? LengthUnit::centimetre : LengthUnit::inch);
      sheet.go_to(Worksheet::measure_index);
      sheet.ensureWidgetVisible(sheet.measure()->brim());
      snap(left ? "80-cap-measure" : "83-cap-measure-right");
      w.stage().look(viewer::View::front);
      snap(left ? "81-cap-front" : "84-cap-front-right");
      const geometry::Head& head = w.session().head().head;
      const geometry::Cap worn =
          geometry::cap_on(head, w.session().case_file().the_case.cap.brim_over_nasion_mm);
      const geometry::CapSlip slip{3.5, 0, left ? 5.0 : -5.0};
      geometry::BrimReadings read;
      read.heights = geometry::brim_heights(head, worn, slip);
      read.arrow_mm = geometry::arrow_beside_nasion_mm(head, worn, slip);
      sheet.go_to(Worksheet::check_index);
      w.visit().set(read);
      sheet.check()->cap()->by_brim()->click();
      QTest::qWait(50);
      sheet.ensureWidgetVisible(sheet.check()->cap());
      w.stage().look(left ? viewer::View::front_left : viewer::View::front_right);
      snap(left ? "82-cap-check" : "85-cap-check-right");
      sheet.check()->cap()->by_brim()->click();
      w.visit().forget();
      w.set_mode(Mode::teach);
      opened_.teach.panel().what_if()->button(WhatIfControls::cap)->click();
      snap(left ? "86-cap-what-if" : "87-cap-what-if-right");
      opened_.teach.panel().what_if()->cap_way()->button(5)->click();
      snap(left ? "88-cap-what-if-turned" : "89-cap-what-if-turned-right");
      opened_.teach.panel().what_if()->clear();
      w.set_mode(Mode::worksheet);
    }
    sheet.set_unit(LengthUnit::centimetre);
    while (w.session().history().can_undo()) w.session().undo();
    opened_.settle();
  }

  /// The demo on an MRI, and its sheet; only where the template head is installed.
  void run_mri() {
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

private:
  void hover(const Eigen::Vector3d& at) {
    StageView& stage = opened_.window.stage();
    const QPoint there = stage.position_of(at).toPoint();
    QMouseEvent move(QEvent::MouseMove, there, stage.mapToGlobal(there), Qt::NoButton, Qt::NoButton,
                     Qt::NoModifier);
    QApplication::sendEvent(&stage, &move);
  }

  void lesson_steps(const char* name) {
    LessonPlayer& player = opened_.teach.player();
    for (int i = 0; i < player.count(); ++i) {
      player.go_to(i);
      snap(QStringLiteral("%1-%2").arg(name).arg(i + 1).toLatin1());
    }
  }

  void snap(const char* name) {
    QTest::qWait(600);  // until the panel has its new layout
    QWidget& w = opened_.window;
    QImage shot = w.grab().toImage();
    // grab() leaves out what OpenGL drew.
    if (opened_.window.stage().isVisible()) {
      QPainter painter(&shot);
      painter.drawImage(opened_.window.stage().mapTo(&w, QPoint(0, 0)), opened_.window.stage().picture());
      // Nor does it know what lies over the stage by now.
      QWidgetList over = opened_.window.stage().findChildren<QWidget*>();
      over << &opened_.window.next_mark() << &opened_.window.start_page();
      for (QWidget* each : over)
        if (each->isVisible()) painter.drawPixmap(each->mapTo(&w, QPoint(0, 0)), each->grab());
    }
    const QString file = QStringLiteral("%1/%2-%3.png").arg(folder_).arg(size_.height()).arg(name);
    shot.save(file);
    std::printf("%s\n", qPrintable(file));
    say_mistaken(opened_.window, name);
  }

  OpenedWindow opened_;
  QString folder_;
  QSize size_;
};

}  // namespace

int main(int argc, char** argv) {
  const QString folder = argc > 1 ? QString::fromLocal8Bit(argv[1]) : QStringLiteral("build/tour");
  const TestSession bench(argc, argv);
  if (argc > 2 && QLatin1String(argv[2]) == QLatin1String("every"))
    return tour_of_settings(folder, argc > 3 ? argv[3] : "") ? 0 : 1;
  if (argc > 2 && QLatin1String(argv[2]) == QLatin1String("hands")) {
    QDir().mkpath(folder);
    tour_of_hands(folder);
    return 0;
  }
  if (argc > 2 && QLatin1String(argv[2]) == QLatin1String("practise")) {
    QDir().mkpath(folder);
    tour_of_practise(folder);
    return 0;
  }
  for (const QSize size : {QSize(1280, 800), QSize(1920, 1080)}) {
    Tour tour(folder, size);
    const QString alone = argc > 2 ? QString::fromLocal8Bit(argv[2]) : QString();
    if (alone == QLatin1String("lesson")) {
      tour.lesson();
      continue;
    }
    if (alone == QLatin1String("contact")) {
      tour.looked_into();
      continue;
    }
    if (alone == QLatin1String("cap")) {
      tour.cap();
      if (size.width() == 1280) Tour(folder, QSize(960, 620)).cap();
      continue;
    }
    if (alone == QLatin1String("field")) {
      tour.field();
      if (size.width() == 1280) Tour(folder, QSize(960, 620)).field();
      continue;
    }
    if (alone == QLatin1String("visit")) {
      tour.visits();
      if (size.width() == 1280) Tour(folder, QSize(960, 620)).visits();
      continue;
    }
    if (alone == QLatin1String("chair")) {
      tour.chair();
      if (size.width() == 1280) Tour(folder, QSize(960, 620)).chair();
      continue;
    }
    if (alone == QLatin1String("brain")) {
      tour.brain();
      continue;
    }
    tour.run();
    tour.chair();
    if (size.width() == 1280) tour.run_mri();
  }
  tour_of_practise(folder);
  return mistaken_so_far() == 0 ? 0 : 1;
}
