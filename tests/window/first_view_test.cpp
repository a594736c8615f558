#include <catch2/catch.hpp>
#include <cmath>

#include "bench.h"

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
    from_vertex_mm.push_back(w.session().plan().treatment.pulse_tape.vertex_mm);
  });
  opened.type(w.worksheet().measure()->nasion_inion()->edit(), "37");
  opened.settle();
  REQUIRE(with_tapes.size() == 2);
  CHECK_FALSE(with_tapes.front());
  CHECK(std::isnan(from_vertex_mm.front()));
  CHECK(with_tapes.back());
  CHECK(from_vertex_mm.back() > 50);
  CHECK(w.session().history().can_undo());
  w.session().undo();
  opened.settle();
  CHECK_FALSE(w.session().history().can_undo());  // the two views of the head were one edit
}

TEST_CASE("tape distances given up are left out until they are asked for; the plan stays in use") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  bool given_up = false;
  QObject::connect(&w.session(), &Session::changed, [&] {
    if (!w.session().has_tapes() && w.session().is_working() && !given_up) {
      given_up = true;
      QTest::mouseClick(w.work().cancel(), Qt::LeftButton);
    }
  });
  opened.type(w.worksheet().measure()->nasion_inion()->edit(), "37");
  opened.settle();
  REQUIRE(given_up);
  CHECK_FALSE(w.session().has_tapes());
  CHECK(*w.session().kept().entered.tape_mm.nasion_inion_mm == 370);
  // The coil can be laid and dragged, and edits go on, without waiting for them.
  QTest::keyClick(&w.stage(), Qt::Key_T, Qt::ControlModifier);
  w.worksheet().go_to(Worksheet::treat_index);
  opened.type(w.worksheet().treat()->distance()->edit(), "5.5");
  CHECK_FALSE(w.session().is_working());
  CHECK(w.session().plan().treatment.pulse.allFinite());
  // A mark looked up by tapes says why it cannot be.
  CHECK(w.visit().set(TodaysMark::site, {84.0, 112.0, {}, {}}).endsWith("."));

  w.worksheet().go_to(Worksheet::measure_index);
  QTest::qWait(50);
  REQUIRE(w.worksheet().measure()->work_out()->isVisible());
  QTest::mouseClick(w.worksheet().measure()->work_out(), Qt::LeftButton);
  opened.settle();
  CHECK(w.session().has_tapes());
  CHECK(w.session().plan().treatment.pulse_tape.vertex_mm > 50);
  CHECK_FALSE(w.worksheet().measure()->work_out()->isVisible());
}
