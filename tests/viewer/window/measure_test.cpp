#include <catch2/catch.hpp>

#include "tests/viewer/window/opened_window.h"

using namespace scalpmark;
using namespace scalpmark::window;

TEST_CASE(
    "a measure typed in changes the head and the plan, what is no measure changes nothing and says why") {
  OpenedWindow opened;
  Session& session = opened.window.session();
  LengthField* field = opened.window.worksheet().measure()->nasion_inion();

  const Eigen::Vector3d site_before = session.plan().treatment.pulse;
  opened.type(field->edit(), "37,5");
  opened.settle();
  CHECK(session.case_file().the_case.tape_mm.nasion_inion_mm == 375);
  // The head is scaled until its tapes equal those measured, within 0.1 mm (scale.h).
  CHECK(session.plan().tapes.nasion_inion_mm == Approx(375).margin(0.1));
  CHECK((session.plan().treatment.pulse - site_before).norm() > 0.1);

  const std::string before = opened.case_text();
  const auto* plan_before = &session.plan();
  for (const char* bad : {"abc", "99", "3.6.2", "-36", "36 cm cm", "nan", "1e2", "27.9", "44.1"}) {
    INFO(bad << ": " << field->problem().toStdString());
    opened.type(field->edit(), bad);
    opened.settle();
    CHECK(field->problem().startsWith(QString::fromUtf8("\u201cNasion to inion\u201d")));
    CHECK(field->problem().endsWith("."));
    CHECK(opened.case_text() == before);
    CHECK(&session.plan() == plan_before);
  }
  QTest::keyClick(field->edit(), Qt::Key_Escape);
  CHECK(field->problem().isEmpty());
  CHECK(field->edit()->text() == "37.5");
}

TEST_CASE("tapes that disagree are refused with a sentence in the step, the case and its head stay") {
  OpenedWindow opened;
  const std::string before = opened.case_text();
  // 28 cm over the top lengthwise and 36.8 across: no head is shaped like that (more than 30 % off, scale.h).
  opened.type(opened.window.worksheet().measure()->nasion_inion()->edit(), "28");
  opened.settle();
  const QString problem = opened.window.worksheet().measure()->problem();
  CHECK(problem.endsWith("."));
  CHECK(opened.case_text() == before);
  CHECK(opened.window.session().plan().tapes.nasion_inion_mm == Approx(362).margin(0.1));
}

TEST_CASE("a tape left out is taken as not measured") {
  OpenedWindow opened;
  opened.type(opened.window.worksheet().measure()->circumference()->edit(), "");
  opened.settle();
  CHECK_FALSE(opened.window.session().case_file().the_case.tape_mm.circumference_mm);
  CHECK(opened.window.session().plan().tapes.nasion_inion_mm == Approx(362).margin(0.1));
}

TEST_CASE("undo goes back to the start over edits of head, search and treatment, and redo to the end") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  Worksheet& sheet = w.worksheet();
  const std::string first = opened.case_text();
  opened.type(sheet.measure()->tragus_tragus()->edit(), "37.5");
  opened.settle();
  sheet.go_to(Worksheet::search_index);
  QTest::qWait(50);  // an opened step is laid out first
  opened.type(sheet.search()->lateral()->edit(), "4.5");
  opened.type(sheet.search()->angle()->edit(), "40");
  QRadioButton* right = sheet.search()->side()->button(1);
  QTest::mouseClick(right, Qt::LeftButton);
  sheet.go_to(Worksheet::site_index);
  QTest::qWait(50);
  QTest::mouseClick(sheet.site()->hotspot()->button(1, 0), Qt::LeftButton);
  opened.type(sheet.site()->distance()->edit(), "5.5");
  opened.settle();
  const std::string last = opened.case_text();
  CHECK(last != first);
  const geometry::Case& the_case = w.session().case_file().the_case;
  CHECK(the_case.search.lateral_mm == 45);
  CHECK(the_case.coil.angle_deg == 40);
  CHECK(the_case.side == geometry::Side::right);
  CHECK(the_case.hotspot.row == 1);
  CHECK(the_case.treatment.distance_mm == 55);

  int steps = 0;
  while (w.session().history().can_undo() && steps < 50) {
    w.session().undo();
    opened.settle();
    ++steps;
  }
  CHECK(steps == 6);
  CHECK(opened.case_text() == first);
  CHECK(w.session().is_saved());
  CHECK(sheet.measure()->tragus_tragus()->edit()->text() == "36.8");
  while (w.session().history().can_redo()) {
    w.session().redo();
    opened.settle();
  }
  CHECK(opened.case_text() == last);
}

TEST_CASE("inches are shown and read on request, and the case stays in millimetres") {
  OpenedWindow opened;
  opened.window.worksheet().set_unit(LengthUnit::inch);
  LengthField* field = opened.window.worksheet().measure()->nasion_inion();
  // 362 mm / 25.4 mm an inch.
  CHECK(field->edit()->text() == "14.25");
  opened.type(field->edit(), "14 1/2");
  opened.settle();
  CHECK(*opened.window.session().case_file().the_case.tape_mm.nasion_inion_mm ==
        Approx(14.5 * 25.4).margin(0.001));
}

TEST_CASE("every field of the search refuses what is out of its range and keeps the case") {
  OpenedWindow opened;
  SearchStep* search = opened.window.worksheet().search();
  opened.window.worksheet().go_to(Worksheet::search_index);
  const std::string before = opened.case_text();
  const auto refuses = [&](NumberField* field, const char* text) {
    INFO(text);
    opened.type(field->edit(), text);
    CHECK(field->problem().endsWith("."));
    CHECK(opened.case_text() == before);
    QTest::keyClick(field->edit(), Qt::Key_Escape);
    CHECK(field->problem().isEmpty());
  };
  refuses(search->lateral(), "10.1");
  refuses(search->lateral(), "-1");
  refuses(search->anterior(), "5.1");
  refuses(search->pitch(), "0.1");
  refuses(search->centre_to_edge(), "0.5");
  refuses(search->lift(), "3.1");
  refuses(search->angle(), "181");
  refuses(search->angle(), "45.5");
  refuses(opened.window.worksheet().site()->distance(), "11");
  SiteStep* site = opened.window.worksheet().site();
  opened.window.worksheet().go_to(Worksheet::site_index);
  QTest::qWait(50);
  QTest::mouseClick(site->rule()->button(1), Qt::LeftButton);
  const std::string with_landmark = opened.case_text();
  opened.type(site->label(), "Q9");
  CHECK(site->problem().contains("Q9"));
  CHECK(opened.case_text() == with_landmark);
  opened.type(site->label(), "f5");
  CHECK(opened.window.session().case_file().the_case.treatment.label == "F5");
}

TEST_CASE("a refusal of tapes goes once another case is in force, on the same head too") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  w.worksheet().go_to(Worksheet::measure_index);
  opened.type(w.worksheet().measure()->nasion_inion()->edit(), "28");
  opened.settle();
  CHECK(w.worksheet().measure()->problem().endsWith("."));
  w.session().start(demo_case());
  opened.settle();
  CHECK(w.worksheet().measure()->problem().isEmpty());
}
