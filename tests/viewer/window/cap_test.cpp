#include <catch2/catch.hpp>

#include "geometry/hands/cap_today.h"
#include "tests/viewer/window/opened_window.h"
#include "viewer/words/cap_words.h"

using namespace scalpmark;
using namespace scalpmark::window;

namespace {

models::CaseFile right_sided() {
  models::CaseFile right = demo_case();
  right.the_case.side = geometry::Side::right;
  right.the_case.cap.brim_over_nasion_mm = 25;
  return right;
}

}  // namespace

TEST_CASE("Measure says how high the brim is to be on this head, shows the cap, and keeps what is typed") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  w.worksheet().go_to(Worksheet::measure_index);
  MeasureStep* step = w.worksheet().measure();
  CHECK(step->brim()->edit()->text() == "2.0");
  const auto heights = [&] {
    const geometry::Head& head = w.session().head().head;
    return geometry::brim_heights(
        head, geometry::cap_on(head, w.session().case_file().the_case.cap.brim_over_nasion_mm));
  };
  const geometry::BrimHeights before = heights();
  CHECK(step->brim_heights().contains(
      QString("%1 over the left tragus")
          .arg(length_with_unit(*before.left_tragus_mm, LengthUnit::centimetre))));
  const StageContent content = step->stage_content({});
  CHECK(content.shown.has(viewer::Thing::cap));
  REQUIRE(content.shown.cap);
  REQUIRE(content.shown.notes.size() == 4);
  CHECK(content.shown.notes[0].text == "2.0 cm");
  CHECK(content.shown.notes[3].text ==
        length_with_unit(*before.inion_mm, LengthUnit::centimetre).toStdString());
  const auto* veil = content.shown.cap.get();
  CHECK(step->stage_content({}).shown.cap.get() == veil);  // not made anew for each look

  opened.type(step->brim()->edit(), "2.5");
  opened.settle();
  CHECK(w.session().case_file().the_case.cap.brim_over_nasion_mm == 25);
  CHECK(step->stage_content({}).shown.cap.get() != veil);
  CHECK(step->brim_heights().contains("Brim 2.5 cm over the nasion"));
  // Level, so half a centimetre higher in front is higher everywhere.
  CHECK(*heights().left_tragus_mm > *before.left_tragus_mm + 3);
  w.worksheet().set_unit(LengthUnit::inch);
  CHECK(step->brim()->edit()->text() == "0.98");  // 25 mm / 25.4 mm an inch
  CHECK(step->brim_heights().contains("Brim 0.98 in over the nasion"));
  const std::string kept = opened.case_text();
  opened.type(step->brim()->edit(), "9");
  CHECK(step->brim()->problem().endsWith("."));
  CHECK(opened.case_text() == kept);
}

TEST_CASE("today's brim heights say what to do with the cap, and the stage shows it as it sits") {
  for (const bool right : {false, true}) {
    OpenedWindow opened(right ? right_sided() : demo_case());
    MainWindow& w = opened.window;
    w.worksheet().go_to(Worksheet::check_index);
    QTest::qWait(50);
    CapFields* cap = w.worksheet().check()->cap();
    QTest::mouseClick(cap->by_brim(), Qt::LeftButton);
    const geometry::Head& head = w.session().head().head;
    const geometry::Cap worn =
        geometry::cap_on(head, w.session().case_file().the_case.cap.brim_over_nasion_mm);
    const geometry::CapSlip slip{4, 0, -6};
    const geometry::BrimHeights h = geometry::brim_heights(head, worn, slip);
    const auto enter = [&](std::size_t which, double mm) {
      opened.type(cap->field(which)->edit(), length_text(mm, LengthUnit::centimetre));
    };
    enter(0, *h.nasion_mm);
    CHECK(cap->said().isEmpty());  // one height says nothing
    enter(1, *h.left_tragus_mm);
    CHECK(cap->said().contains("back"));
    CHECK(cap->said().contains("arrow passes"));  // heights hardly say whether it is turned
    enter(3, *h.inion_mm);
    enter(4, geometry::arrow_beside_nasion_mm(head, worn, slip));
    REQUIRE(w.visit().cap());
    // Typed to the millimetre.
    CHECK(w.visit().cap()->found.slip.forward_deg == Approx(4).margin(0.6));
    CHECK(w.visit().cap()->found.slip.turn_deg == Approx(-6).margin(0.9));
    CHECK(cap->said().contains("Slide the cap"));
    CHECK(cap->said().contains("degrees to the patient's right"));
    CHECK_FALSE(cap->said().contains("hardly"));
    const StageContent content = w.worksheet().check()->stage_content({});
    CHECK(content.shown.cap == w.visit().cap_veil());
    REQUIRE(content.shown.placement);
    CHECK((content.shown.placement->pulse - w.visit().cap()->check.as_laid.pulse).norm() < 1e-9);

    opened.type(cap->field(1)->edit(), "15");  // nobody's cap
    CHECK(cap->field(1)->problem().endsWith("."));
    CHECK_FALSE(w.visit().cap());
    w.visit().forget();
    CHECK(cap->said().isEmpty());
    CHECK_FALSE(w.worksheet().check()->stage_content({}).shown.has(viewer::Thing::cap));
  }
}

TEST_CASE("what if the cap has slipped is what the kernel says, with the cap as it then sits") {
  for (const bool right : {false, true}) {
    OpenedWindow opened(right ? right_sided() : demo_case());
    MainWindow& w = opened.window;
    w.set_mode(Mode::teach);
    opened.settle();
    WhatIfControls& controls = *opened.teach.panel().what_if();
    const auto same = [&](const geometry::CapMove& move) {
      REQUIRE(opened.teach.outcome());
      const auto expected = geometry::if_cap_slipped(
          w.session().head().head, w.session().case_file().the_case, w.session().plan(), move);
      CHECK(opened.teach.outcome()->result.off_mm == Approx(expected.off_mm).margin(1e-9));
      CHECK((opened.teach.outcome()->result.really.pulse - expected.really.pulse).norm() < 1e-9);
      CHECK(opened.teach.outcome()->cap);
      CHECK(opened.teach.bar().caption().contains(QString("%1 cm off").arg(expected.off_mm / 10, 0, 'f', 1)));
    };
    controls.button(WhatIfControls::cap)->click();
    same({5, 0, 0});
    CHECK(opened.teach.bar().caption().contains("slid 0.5 cm forward"));
    CHECK(controls.cap_slid()->isVisibleTo(&controls));
    CHECK_FALSE(controls.cap_turned()->isVisibleTo(&controls));
    controls.cap_way()->button(1)->click();
    same({-5, 0, 0});
    controls.cap_way()->button(2)->click();
    same({0, -5, 0});
    CHECK(opened.teach.bar().caption().contains("to the patient's left"));
    controls.cap_way()->button(3)->click();
    same({0, 5, 0});
    controls.cap_way()->button(4)->click();
    same({0, 0, -5});
    CHECK(opened.teach.bar().caption().contains("to the patient's left"));
    CHECK(controls.cap_turned()->isVisibleTo(&controls));
    controls.cap_way()->button(5)->click();
    same({0, 0, 5});
  }
}
