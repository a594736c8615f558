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

/// At the site, each coil on both sides.
void Tour::for_each_coil(const std::function<void(const geometry::Coil&)>& look) {
  MainWindow& w = opened_.window;
  for (const geometry::Side side : {geometry::Side::left, geometry::Side::right})
    for (const geometry::Coil& coil : models::coils()) {
      w.session().change("Coil", [&](models::CaseFile& case_file) {
        case_file.the_case.side = side;
        case_file.the_case.coil.model = coil;
        case_file.the_case.coil.centre_to_edge_mm = coil.centre_to_edge_mm;
      });
      opened_.settle();
      w.worksheet().go_to(Worksheet::site_index);
      look(coil);
    }
}

void Tour::looked_into() {
  MainWindow& w = opened_.window;
  w.set_gaps(true);
  const auto found = [&] {
    OpenedWindow::wait_until([&] { return w.under_coil().gaps() != nullptr; });
    QTest::qWait(30);
  };
  int number = 90;
  for_each_coil([&](const geometry::Coil& coil) {
    w.stage().look(viewer::View::square_on);
    found();
    snap(QStringLiteral("%1-gaps-%2").arg(number++).arg(QString::fromStdString(coil.model)).toLatin1());
  });
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

void Tour::field() {
  MainWindow& w = opened_.window;
  w.set_field(true);
  int number = 100;
  for_each_coil([&](const geometry::Coil& coil) {
    w.stage().look(number % 2 == 0 ? viewer::View::square_on : viewer::View::front_left);
    snap(QStringLiteral("%1-field-%2").arg(number++).arg(QString::fromStdString(coil.model)).toLatin1());
  });
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

void Tour::lesson() {
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

void Tour::cap() {
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

void Tour::lesson_steps(const char* name) {
  LessonPlayer& player = opened_.teach.player();
  for (int i = 0; i < player.count(); ++i) {
    player.go_to(i);
    snap(QStringLiteral("%1-%2").arg(name).arg(i + 1).toLatin1());
  }
}

}  // namespace scalpmark::window
