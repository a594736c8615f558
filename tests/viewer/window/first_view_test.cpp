#include <catch2/catch.hpp>
#include <cmath>

#include "tests/viewer/window/opened_window.h"

using namespace scalpmark;
using namespace scalpmark::window;

TEST_CASE("a new head is shown with its plan before its tape distances are worked out") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  // Another head: the first news of it comes without tape distances, the last with them.
  std::vector<bool> with_tapes;
  std::vector<double> from_vertex_mm;
  QObject::connect(&w.session(), &Session::changed, [&] {
    with_tapes.push_back(w.session().has_tapes());
    const auto& tape = w.session().plan().treatment.pulse_tape;
    from_vertex_mm.push_back(tape ? tape->vertex_mm : 0);
  });
  opened.type(w.worksheet().measure()->nasion_inion()->edit(), "37");
  opened.settle();
  REQUIRE(with_tapes.size() == 2);
  CHECK_FALSE(with_tapes.front());
  CHECK(from_vertex_mm.front() == 0);
  CHECK(with_tapes.back());
  CHECK(from_vertex_mm.back() > 50);
  CHECK(w.session().history().can_undo());
  w.session().undo();
  opened.settle();
  CHECK_FALSE(w.session().history().can_undo());  // the two views of the head were one edit
}

TEST_CASE("tape distances given up are left out until they are asked for, the plan stays in use") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  bool given_up = false;
  QObject::connect(&w.session(), &Session::changed, [&] {
    if (!w.session().has_tapes() && w.session().is_working() && !given_up) {
      given_up = true;
      w.work().cancel()->click();
    }
  });
  opened.type(w.worksheet().measure()->nasion_inion()->edit(), "37");
  opened.settle();
  REQUIRE(given_up);
  CHECK_FALSE(w.session().has_tapes());
  CHECK(*w.session().case_file().the_case.tape_mm.nasion_inion_mm == 370);
  // Edits go on without waiting for them.
  w.worksheet().go_to(Worksheet::site_index);
  opened.type(w.worksheet().site()->distance()->edit(), "5.5");
  CHECK_FALSE(w.session().is_working());
  CHECK(w.session().plan().treatment.pulse.allFinite());

  w.worksheet().go_to(Worksheet::measure_index);
  QTest::qWait(50);
  REQUIRE(w.worksheet().measure()->work_out()->isVisible());
  QTest::mouseClick(w.worksheet().measure()->work_out(), Qt::LeftButton);
  opened.settle();
  CHECK(w.session().has_tapes());
  CHECK(w.session().plan().treatment.pulse_tape->vertex_mm > 50);
  CHECK_FALSE(w.worksheet().measure()->work_out()->isVisible());
}

TEST_CASE("every edit gets its tape distances, the same as looked up once the coil was in the hand") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  CHECK_FALSE(w.session().has_fields());
  w.worksheet().go_to(Worksheet::site_index);
  opened.type(w.worksheet().site()->distance()->edit(), "5.5");
  opened.settle();
  REQUIRE(w.session().has_tapes());
  const geometry::TapeFrom each = *w.session().plan().treatment.pulse_tape;

  // A name for the sheet leaves the plan as it is.
  const geometry::Plan* const plan = &w.session().plan();
  CHECK(w.session()
            .change("Label", [](models::CaseFile& case_file) { case_file.the_case.label = "Training"; })
            .isEmpty());
  CHECK(&w.session().plan() == plan);
  CHECK(w.session().has_tapes());

  // In the hand the numbers come when the coil rests, and then follow at once.
  QTest::keyClick(&w.stage(), Qt::Key_Up, Qt::ControlModifier);
  REQUIRE(w.coil().placement);
  CHECK(!w.coil().placement->pulse_tape);
  OpenedWindow::wait_until([&] { return w.session().has_fields() && !w.session().is_working(); });
  CHECK(w.coil().placement->pulse_tape->vertex_mm > 50);
  QTest::keyClick(&w.stage(), Qt::Key_Down, Qt::ControlModifier);
  CHECK(w.coil().placement->pulse_tape->vertex_mm == Approx(each.vertex_mm).margin(0.3));

  opened.type(w.worksheet().site()->distance()->edit(), "6");
  CHECK(w.session().has_tapes());
  opened.type(w.worksheet().site()->distance()->edit(), "5.5");
  const geometry::TapeFrom looked_up = *w.session().plan().treatment.pulse_tape;
  CHECK(looked_up.vertex_mm == Approx(each.vertex_mm).margin(0.05));
  CHECK(looked_up.nasion_mm == Approx(each.nasion_mm).margin(0.05));
  CHECK(looked_up.left_tragus_mm == Approx(each.left_tragus_mm).margin(0.05));
  CHECK(looked_up.right_tragus_mm == Approx(each.right_tragus_mm).margin(0.05));
}

TEST_CASE("a mark entered by tape waits for the head's fields, and says so when they are given up") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  const geometry::TapeFrom planned = *w.session().plan().treatment.pulse_tape;
  const geometry::TapeReadings readings{planned.vertex_mm, planned.nasion_mm, planned.left_tragus_mm, {}};
  CHECK(w.visit().set(TodaysMark::site, readings).isEmpty());
  REQUIRE(w.session().is_working());
  CHECK_FALSE(w.visit().mark(TodaysMark::site));
  w.session().cancel();
  CHECK(w.visit().problem().endsWith("."));
  CHECK_FALSE(w.visit().mark(TodaysMark::site));

  CHECK(w.visit().set(TodaysMark::site, readings).isEmpty());
  opened.settle();
  REQUIRE(w.visit().mark(TodaysMark::site));
  CHECK(w.visit().problem().isEmpty());
  const auto& skin = w.session().head().head.skin();
  CHECK((skin.position(*w.visit().mark(TodaysMark::site)) - w.session().plan().treatment.pulse).norm() < 0.1);
}
