// What draws a mark and what lays the coil over it are entered apart, and their difference is said.
#include <catch2/catch.hpp>

#include "geometry/plan/pulse_shift.h"
#include "tests/viewer/window/opened_window.h"

using namespace scalpmark;
using namespace scalpmark::window;
using geometry::MarkRule;

TEST_CASE("each rule is entered on its own, and undone on its own") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  const auto& c = [&]() -> const geometry::Case& { return w.session().case_file().the_case; };
  w.worksheet().go_to(Worksheet::search_index);
  CHECK(w.worksheet().search()->drawn_by()->chosen() == static_cast<int>(MarkRule::tape));
  CHECK(w.worksheet().search()->laid_by()->chosen() == static_cast<int>(MarkRule::drop));
  w.worksheet().search()->laid_by()->button(2)->click();
  CHECK(c().coil.laid_by == MarkRule::nearest);
  CHECK(c().search.drawn_by == MarkRule::tape);
  CHECK(c().treatment.drawn_by == MarkRule::drop);
  w.worksheet().search()->drawn_by()->button(1)->click();
  CHECK(c().search.drawn_by == MarkRule::drop);
  CHECK(c().coil.laid_by == MarkRule::nearest);
  w.worksheet().go_to(Worksheet::site_index);
  w.worksheet().site()->drawn_by()->button(0)->click();
  CHECK(c().treatment.drawn_by == MarkRule::tape);
  CHECK(c().search.drawn_by == MarkRule::drop);
  for (int i = 0; i < 3; ++i) w.session().undo();
  CHECK(c().treatment.drawn_by == MarkRule::drop);
  CHECK(c().search.drawn_by == MarkRule::tape);
  CHECK(c().coil.laid_by == MarkRule::drop);
  CHECK(w.worksheet().search()->laid_by()->chosen() == static_cast<int>(MarkRule::drop));
}

TEST_CASE("the search step says what to do at each spot, and nothing where one rule draws and lays") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  w.worksheet().go_to(Worksheet::search_index);
  SearchStep& step = *w.worksheet().search();
  std::set<QString> notes;
  for (const auto& spot : w.session().plan().grid) {
    step.spots()->button(spot.row, spot.column)->click();
    const QString note = step.shift_note();
    CAPTURE(spot.row, spot.column, note.toStdString());
    const geometry::Placement& p = spot.placement;
    REQUIRE(geometry::is_shifted(p));
    REQUIRE(p.tape_to_draw_mm);
    CHECK(note.contains(QString("the pulse lands %1 cm behind").arg(p.wanted_to_pulse_mm / 10, 0, 'f', 1)));
    CHECK(note.contains(QString("Draw the mark %1 cm along the skin instead of 6.0")
                            .arg(*p.tape_to_draw_mm / 10, 0, 'f', 1)));
    notes.insert(note);
  }
  step.laid_by()->button(0)->click();
  CHECK(step.shift_note().isEmpty());
  step.laid_by()->button(1)->click();
  CHECK_FALSE(step.shift_note().isEmpty());
}

TEST_CASE("a landmark across the head is said before it holds, and taken only when confirmed") {
  for (const bool left : {true, false}) {
    OpenedWindow opened;
    MainWindow& w = opened.window;
    if (!left) w.worksheet().search()->side()->button(1)->click();
    const QString across = left ? "F4" : "F3", same = left ? "F3" : "F4";
    w.worksheet().go_to(Worksheet::site_index);
    SiteStep& site = *w.worksheet().site();
    site.rule()->button(1)->click();
    const auto label = [&] { return w.session().case_file().the_case.treatment.label; };
    REQUIRE(label() == same.toStdString());
    opened.type(site.label(), across);
    CHECK(label() == same.toStdString());  // not yet
    CHECK(site.problem().startsWith(across + " lies on the patient's " + (left ? "right" : "left")));
    CHECK_FALSE(site.other_side()->isHidden());
    CHECK(site.other_side()->text().contains(left ? "right" : "left"));
    // Leaving the field confirms nothing.
    emit site.label()->editingFinished();
    CHECK(label() == same.toStdString());
    // Another entry takes it back.
    opened.type(site.label(), same);
    CHECK(site.other_side()->isHidden());
    CHECK(site.problem().isEmpty());
    // Enter twice, or the button.
    opened.type(site.label(), across);
    if (left)
      QTest::keyClick(site.label(), Qt::Key_Return);
    else
      site.other_side()->click();
    CHECK(label() == across.toStdString());
    CHECK(site.other_side()->isHidden());
    CHECK(site.problem().isEmpty());
    opened.settle();
    CHECK(geometry::side_of(w.session().plan().treatment) ==
          (left ? geometry::Side::right : geometry::Side::left));
    CHECK(site.alternatives()->rowCount() == 2);  // no step forward from a hotspot across the head
    // The worksheet's last step looks from where the coil is.
    w.worksheet().go_to(Worksheet::save_index);
    CHECK(w.worksheet().save()->stage_content({}).look.view ==
          (left ? viewer::View::right : viewer::View::left));
  }
}
