#include "geometry/hands/what_if.h"

#include <catch2/catch.hpp>
#include <cmath>

#include "tests/viewer/window/opened_lesson.h"

using namespace scalpmark;
using namespace scalpmark::window;

TEST_CASE("what-if shows what the kernel says of the same mistake, to the millimetre and the degree") {
  for (const bool right : {false, true}) {
    OpenedLesson opened(right ? right_sided() : demo_case());
    const auto& head = opened.window.session().head().head;
    const geometry::Case& the_case = opened.window.session().case_file().the_case;
    const geometry::Plan plan = opened.window.session().plan();
    WhatIfControls& controls = *opened.teach.panel().what_if();
    const auto same = [&](const geometry::WhatIf& expected) {
      REQUIRE(opened.teach.outcome());
      CHECK(opened.teach.outcome()->result.off_mm == Approx(expected.off_mm).margin(1e-9));
      CHECK((opened.teach.outcome()->result.really.pulse - expected.really.pulse).norm() < 1e-9);
      const QString said = opened.teach.bar().caption();
      INFO(said.toStdString());
      CHECK(said.contains(QString("%1 cm off").arg(expected.off_mm / 10, 0, 'f', 1)));
      CHECK(said.contains(
          QString::fromUtf8("lies at %1\u00b0 to the midline").arg(std::lround(expected.really.angle_deg))));
      CHECK(said.count('.') >= 1);
      CHECK(said.endsWith('.'));
      // The coil on the stage is the real one.
      opened.draw();
      CHECK(opened.note("real pulse point"));
    };
    opened.pick(WhatIfControls::vertex);
    same(geometry::if_vertex_off(head, the_case, plan, 10, 0));
    opened.type(controls.vertex_off()->edit(), "2,5");
    same(geometry::if_vertex_off(head, the_case, plan, 25, 0));
    QTest::mouseClick(controls.vertex_way()->button(3), Qt::LeftButton, Qt::NoModifier, QPoint(8, 8));
    same(geometry::if_vertex_off(head, the_case, plan, 0, 25));
    opened.pick(WhatIfControls::tape);
    same(geometry::if_misread(head, the_case, plan, geometry::Misread::treatment, 5));
    controls.which_tape()->button(0)->setFocus();
    opened.press(controls.which_tape()->button(0), Qt::Key_Space);
    same(geometry::if_misread(head, the_case, plan, geometry::Misread::lateral, 5));
    opened.press(controls.tape_way()->button(1), Qt::Key_Space);
    same(geometry::if_misread(head, the_case, plan, geometry::Misread::lateral, -5));
    opened.press(controls.which_tape()->button(3), Qt::Key_Space);
    same(geometry::if_misread(head, the_case, plan, geometry::Misread::centre_to_edge, -5));
    opened.pick(WhatIfControls::turned);
    same(geometry::if_coil_turned(head, the_case, plan, 10));
    controls.turned_by()->edit()->setFocus();
    opened.press(controls.turned_by()->edit(), Qt::Key_Up);
    same(geometry::if_coil_turned(head, the_case, plan, 11));
    CHECK(opened.teach.bar().caption().contains("In a round model head"));
    opened.press(controls.turned_about()->button(1), Qt::Key_Space);
    REQUIRE(opened.teach.outcome());
    CHECK(opened.teach.outcome()->result.off_mm < 1e-6);
    CHECK(opened.teach.bar().caption().contains("about its centre"));
    opened.pick(WhatIfControls::off);
    REQUIRE(opened.teach.outcome());
    CHECK(opened.teach.outcome()->result.really.lift_mm == Approx(plan.treatment.lift_mm + 5));
    CHECK(opened.teach.bar().caption().contains("0.5 cm more of hair or air"));
    opened.press(controls.off_how()->button(1), Qt::Key_Space);
    REQUIRE(opened.teach.outcome());
    CHECK(opened.teach.bar().caption().contains("left wing lifted by 10"));
    CHECK(opened.teach.outcome()->result.really.normal.dot(
              plan.treatment.front.cross(plan.treatment.normal)) > 0.1);  // its right side down
    opened.pick(WhatIfControls::rule);
    same(geometry::if_rule_changed(head, the_case, plan, geometry::MarkRule::tape));
    opened.press(controls.laid_by()->button(2), Qt::Key_Space);
    same(geometry::if_rule_changed(head, the_case, plan, geometry::MarkRule::nearest));
  }
}

TEST_CASE("a mistake's marks stand on the stage where they are, with the line between and its length") {
  OpenedLesson opened;
  opened.pick(WhatIfControls::turned);
  const viewer::MistakeOutcome& outcome = *opened.teach.outcome();
  const geometry::Plan plan = opened.window.session().plan();
  const auto wanted = opened.note("wanted pulse point");
  REQUIRE(wanted);
  CHECK((*wanted - plan.treatment.pulse).norm() < 1e-9);
  const auto real = opened.note("real pulse point");
  REQUIRE(real);
  CHECK((*real - outcome.result.really.pulse).norm() < 1e-9);
  CHECK(opened.note(QString("%1 cm").arg(outcome.result.off_mm / 10, 0, 'f', 1)));
  // Turned about its edge mark: that one stays.
  CHECK(opened.note("edge mark, in its place"));

  opened.pick(WhatIfControls::vertex);
  CHECK(opened.note("wanted search start"));
  const auto edge = opened.note("real edge mark");
  REQUIRE(edge);
  CHECK((*edge - *opened.teach.outcome()->result.really.mark).norm() < 1e-2);
  REQUIRE(opened.note("wanted edge mark"));
  // Edge mark and pulse are carried along together, by about as much (a mark 6 cm away, on a round head).
  CHECK(opened.teach.outcome()->edge_mark_off_mm ==
        Approx(opened.teach.outcome()->result.off_mm).epsilon(0.25));

  // No text stands over another.
  opened.draw();
  const auto& labels = opened.stage().labels();
  for (std::size_t i = 0; i < labels.size(); ++i)
    for (std::size_t j = 0; j < i; ++j) {
      INFO(labels[i].wish.text << " and " << labels[j].wish.text);
      CHECK_FALSE(labels[i].box.overlaps(labels[j].box));
    }
}

TEST_CASE("nothing wrong, a step, or playing takes a mistake back") {
  OpenedLesson opened;
  opened.teach.player().go_to(4);
  const QString caption = opened.teach.bar().caption();
  const auto back = [&] {
    CHECK_FALSE(opened.teach.outcome());
    CHECK(opened.teach.panel().what_if()->kind() == WhatIfControls::nothing);
    CHECK_FALSE(opened.note("real pulse point"));
  };
  opened.pick(WhatIfControls::tape);
  CHECK(opened.teach.bar().caption() != caption);
  opened.pick(WhatIfControls::nothing);
  back();
  CHECK(opened.teach.bar().caption() == caption);
  // The step it was at already is as good as any other.
  opened.pick(WhatIfControls::tape);
  QListWidget* list = opened.teach.panel().steps();
  QTest::mouseClick(list->viewport(), Qt::LeftButton, Qt::NoModifier,
                    list->visualItemRect(list->item(4)).center());
  back();
  CHECK(opened.teach.bar().caption() == caption);
  opened.pick(WhatIfControls::turned);
  opened.press(&opened.window.stage(), Qt::Key_Space);
  CHECK(opened.teach.player().is_playing());
  back();
  // And a mistake stops the playing.
  opened.pick(WhatIfControls::rule);
  CHECK_FALSE(opened.teach.player().is_playing());
  CHECK(opened.teach.outcome());
  CHECK(opened.at() == 4);
}

TEST_CASE("an amount that cannot be is answered beside it and changes nothing") {
  OpenedLesson opened;
  WhatIfControls& controls = *opened.teach.panel().what_if();
  opened.pick(WhatIfControls::vertex);
  const QString said = opened.teach.bar().caption();
  for (const char* typed : {"9", "-1", "0", "one", "1e99", "nan"}) {
    INFO(typed);
    opened.type(controls.vertex_off()->edit(), typed);
    CHECK(controls.vertex_off()->problem().endsWith('.'));
    CHECK(opened.teach.bar().caption() == said);
    opened.press(controls.vertex_off()->edit(), Qt::Key_Escape);
    CHECK(controls.vertex_off()->problem().isEmpty());
  }
  // A mistake that the kernel refuses: so short a first length that it runs past the vertex.
  opened.window.session().change(
      "Short", [](models::CaseFile& case_file) { case_file.the_case.search.lateral_mm = 3; });
  opened.pick(WhatIfControls::tape);
  opened.press(controls.which_tape()->button(0), Qt::Key_Space);
  opened.press(controls.tape_way()->button(1), Qt::Key_Space);
  CHECK(controls.problem().endsWith('.'));
  CHECK_FALSE(opened.teach.outcome());
  opened.press(controls.tape_way()->button(0), Qt::Key_Space);
  CHECK(controls.problem().isEmpty());
  CHECK(opened.teach.outcome());
}
