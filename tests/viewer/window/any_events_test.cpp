#include <catch2/catch.hpp>
#include <deque>

#include "tests/viewer/window/random_user.h"

using namespace scalpmark;
using namespace scalpmark::window;

// Bounded here; build/bench_random_user goes on for as long as one likes.
TEST_CASE("whatever is done in whatever order, what is shown is the plan of the case that is shown") {
  constexpr int longest_ms = 15'000;
  OpenedWindow opened;
  opened.window.resize(960, 620);
  RandomUser user(opened, 20261127);
  std::deque<std::string> lately;
  QElapsedTimer since;
  since.start();
  int events = 0;
  for (; since.elapsed() < longest_ms; ++events) {
    lately.push_back(user.act());
    if (lately.size() > 12) lately.pop_front();
    const std::string wrong = wrong_state(opened.window);
    if (wrong.empty()) continue;
    for (const std::string& what : lately) UNSCOPED_INFO(what);
    FAIL("after event " << events << ": " << wrong);
  }
  opened.settle();
  CHECK(wrong_state(opened.window).empty());
  CHECK(events > 20);
}

TEST_CASE("a whole case is entered, checked and read out by keyboard alone") {
  OpenedWindow opened(models::default_case());
  MainWindow& w = opened.window;
  const auto key = [&](Qt::Key which, Qt::KeyboardModifiers with = Qt::NoModifier) {
    QWidget* to = QApplication::focusWidget() ? QApplication::focusWidget() : &w;
    QTest::keyClick(to, which, with);
  };
  // Tab until the keys go to what is meant; nothing may need more than all there is.
  const auto tab_to = [&](QWidget* wanted) {
    QWidget* target = wanted->focusProxy() ? wanted->focusProxy() : wanted;
    for (int i = 0; i < 400; ++i) {
      if (QApplication::focusWidget() == target) return true;
      key(Qt::Key_Tab);
    }
    return false;
  };
  const auto enter = [&](NumberField* field, const QString& text) {
    REQUIRE(tab_to(field->edit()));
    QTest::keyClicks(field->edit(), text);  // what Tab selected is typed over
    key(Qt::Key_Return);
    opened.settle();
    CHECK(field->problem().isEmpty());
  };
  const auto open_step = [&](Worksheet::StepIndex index) {
    if (w.worksheet().step(index)->is_open() && w.worksheet().current() == index) return;
    REQUIRE(tab_to(w.worksheet().step(index)->heading()));
    key(Qt::Key_Return);
    CHECK(w.worksheet().current() == index);
  };
  const auto press = [&](QPushButton* button) {
    REQUIRE(tab_to(button));
    key(Qt::Key_Return);
    opened.settle();
  };
  REQUIRE(tab_to(w.worksheet().step(Worksheet::measure_index)->heading()));
  enter(w.worksheet().measure()->nasion_inion(), "35.4");
  enter(w.worksheet().measure()->tragus_tragus(), "36.0");
  enter(w.worksheet().measure()->circumference(), "55.6");
  open_step(Worksheet::search_index);
  enter(w.worksheet().search()->lateral(), "5.2");
  press(w.worksheet().search()->spots()->button(1, 0));
  CHECK(w.coil().row == 1);
  press(w.worksheet().search()->answered());
  open_step(Worksheet::site_index);
  enter(w.worksheet().site()->distance(), "5.5");
  const geometry::Case& c = w.session().case_file().the_case;
  CHECK(*c.tape_mm.circumference_mm == Approx(556));
  CHECK(c.search.lateral_mm == Approx(52));
  CHECK(c.hotspot == geometry::GridPosition{1, 0});
  CHECK_FALSE(c.hotspot_awaited);
  CHECK(c.treatment.distance_mm == Approx(55));
  // Today's marks by tape, as the plan has them.
  open_step(Worksheet::check_index);
  const geometry::Placement site = w.session().plan().treatment;
  for (const TodaysMark which : {TodaysMark::site, TodaysMark::edge}) {
    press(w.worksheet().check()->tape_button(which));
    const geometry::TapeFrom& from = which == TodaysMark::site ? *site.pulse_tape : *site.edge_mark_tape;
    const double lengths[]{from.vertex_mm, from.nasion_mm, from.left_tragus_mm, from.right_tragus_mm};
    for (std::size_t i = 0; i < 4; ++i)
      enter(w.worksheet().check()->tape(which, i), length_text(lengths[i], LengthUnit::centimetre));
  }
  REQUIRE(w.visit().check());
  CHECK(w.worksheet().check()->verdict().kind == VerdictText::Kind::agrees);
  open_step(Worksheet::save_index);
  press(w.worksheet().save()->numbers());
  CHECK(w.next_mark().isVisible());
  key(Qt::Key_Escape);
  CHECK_FALSE(w.next_mark().isVisible());
  CHECK(wrong_state(w).empty());
}
