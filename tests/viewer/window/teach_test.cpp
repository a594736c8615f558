#include <QAbstractButton>
#include <catch2/catch.hpp>
#include <cmath>

#include "models/meshes/mesh_file.h"
#include "tests/viewer/window/opened_lesson.h"

using namespace scalpmark;
using namespace scalpmark::window;

namespace {

constexpr int patience_ms = 60'000;

std::set<std::string> names_of(const std::vector<viewer::SeenMark>& marks) {
  std::set<std::string> names;
  for (const viewer::SeenMark& mark : marks)
    if (mark.visible) names.insert(mark.name);
  return names;
}

}  // namespace

TEST_CASE("Teach opens on the first of eleven steps with the worksheet out of the way") {
  OpenedLesson opened;
  CHECK(opened.window.mode() == Mode::teach);
  CHECK_FALSE(opened.window.worksheet().isVisible());
  CHECK(opened.teach.panel().isVisible());
  CHECK(opened.teach.bar().isVisible());
  CHECK(opened.progress() == "Step 1 of 11");
  CHECK(opened.teach.panel().steps()->count() == 11);
  CHECK(opened.teach.bar().play()->hasFocus());
  // 36.2 and 36.8 cm are the demo case's tapes (README).
  CHECK(opened.teach.bar().caption().contains("36.2 cm"));
  CHECK(opened.teach.bar().caption().contains("36.8 cm"));
}

TEST_CASE("every step is reached by keys, whatever has the focus") {
  OpenedLesson opened;
  const std::vector<QWidget*> holders{&opened.window.stage(), opened.teach.panel().steps(),
                                      opened.teach.bar().play(),
                                      opened.teach.panel().what_if()->button(WhatIfControls::nothing),
                                      opened.window.mode_button(Mode::teach)};
  for (QWidget* holder : holders) {
    holder->setFocus();
    INFO(holder->metaObject()->className());
    for (int i = 1; i < 11; ++i) {
      opened.press(holder, Qt::Key_PageDown);
      REQUIRE(opened.at() == i);
      CHECK(opened.progress() == QString("Step %1 of 11").arg(i + 1));
      CHECK(opened.teach.panel().steps()->currentRow() == i);
    }
    opened.press(holder, Qt::Key_PageDown);  // there is nothing after the last
    CHECK(opened.at() == 10);
    for (int i = 9; i >= 0; --i) {
      opened.press(holder, Qt::Key_PageUp);
      REQUIRE(opened.at() == i);
    }
    opened.press(holder, Qt::Key_PageUp);
    CHECK(opened.at() == 0);
  }
  // The list goes by its arrow keys too.
  QListWidget* list = opened.teach.panel().steps();
  list->setFocus();
  opened.press(list, Qt::Key_Down);
  CHECK(opened.at() == 1);
  opened.press(list, Qt::Key_End);
  CHECK(opened.at() == 10);
  opened.press(list, Qt::Key_Home);
  CHECK(opened.at() == 0);
}

TEST_CASE("every step is reached by mouse, from the list and by the buttons") {
  OpenedLesson opened;
  QListWidget* list = opened.teach.panel().steps();
  for (const int step : {4, 0, 8, 3, 5, 1, 7, 2, 6}) {
    const QRect row = list->visualItemRect(list->item(step));
    REQUIRE(list->viewport()->rect().contains(row));  // all in sight without scrolling
    QTest::mouseClick(list->viewport(), Qt::LeftButton, Qt::NoModifier, row.center());
    CHECK(opened.at() == step);
  }
  opened.teach.player().go_to(0);
  CHECK_FALSE(opened.teach.bar().previous()->isEnabled());
  for (int i = 1; i < 11; ++i) {
    QTest::mouseClick(opened.teach.bar().next(), Qt::LeftButton);
    CHECK(opened.at() == i);
  }
  CHECK_FALSE(opened.teach.bar().next()->isEnabled());
  QTest::mouseClick(opened.teach.bar().previous(), Qt::LeftButton);
  CHECK(opened.at() == 9);
}

TEST_CASE("each step has its own words and its own things on the stage, seen from its own side") {
  for (const bool right : {false, true}) {
    OpenedLesson opened(right ? right_sided() : demo_case());
    const auto& axes = opened.window.session().head().head.axes();
    std::set<QString> captions;
    std::set<std::set<std::string>> shown;
    for (int i = 0; i < 11; ++i) {
      opened.teach.player().go_to(i);
      INFO("step " << i + 1 << (right ? ", right side" : ", left side"));
      captions.insert(opened.teach.bar().caption());
      opened.draw();
      auto names = names_of(opened.stage().marks());
      for (const auto& label : opened.stage().labels()) names.insert(label.wish.text);
      shown.insert(names);
      // Nobody is made to look at the other side of the head.
      const double sideways = opened.window.stage().gaze().toward_eye.dot(axes.right);
      CHECK((right ? sideways : -sideways) > -1e-6);
    }
    CHECK(captions.size() == 11);
    CHECK(shown.size() == 11);
  }
}

TEST_CASE("the marks a step is about are in sight") {
  for (const bool right : {false, true}) {
    OpenedLesson opened(right ? right_sided() : demo_case());
    // Of steps 2 and 4 it is the pencil mark; see below.
    const std::vector<std::set<std::string>> about{{"Nz"},
                                                   {},
                                                   {"Cz", "left tragus", "right tragus"},
                                                   {"Cz"},
                                                   {"Cz", "start"},
                                                   {"wanted", "grid +1 +1 pulse", "edge mark drop"},
                                                   {"hotspot", "grid -1 -1 pulse"},
                                                   {"hotspot", "treatment"},
                                                   {"treatment", "edge mark drop"},
                                                   {"treatment"},
                                                   {"hotspot"}};
    REQUIRE(about.size() == 11);
    for (int i = 0; i < 11; ++i) {
      opened.teach.player().go_to(i);
      opened.draw();
      const auto seen = names_of(opened.stage().marks());
      for (const std::string& name : about[static_cast<std::size_t>(i)]) {
        INFO("step " << i + 1 << ": " << name << (right ? ", right side" : ", left side"));
        CHECK(seen.contains(name));
      }
    }
    // Half of the demo case's 36.2 cm, on the vertex; 5 cm down from it.
    opened.teach.player().go_to(1);
    const auto& vertex = opened.window.session().head().head.vertex();
    REQUIRE(opened.note("18.1 cm"));
    CHECK((*opened.note("18.1 cm") - opened.window.session().head().head.skin().position(vertex)).norm() <
          0.5);
    opened.teach.player().go_to(3);
    REQUIRE(opened.note("5.0 cm"));
  }
}

TEST_CASE("playing turns the pages to the end, stops there, and plays again from the start") {
  OpenedLesson opened;
  LessonPlayer& player = opened.teach.player();
  player.set_tempo(0.002);
  std::vector<int> pages;
  QObject::connect(&player, &LessonPlayer::step_changed, [&] { pages.push_back(player.current()); });
  opened.press(opened.teach.bar().play(), Qt::Key_Space);
  CHECK(player.is_playing());
  CHECK(opened.teach.bar().play()->text() == "Pause");
  REQUIRE(QTest::qWaitFor([&] { return !player.is_playing(); }, patience_ms));
  CHECK(pages == std::vector<int>{1, 2, 3, 4, 5, 6, 7, 8, 9, 10});
  CHECK(opened.teach.bar().play()->text() == "Play again");
  QTest::qWait(50);
  CHECK(opened.at() == 10);
  QTest::mouseClick(opened.teach.bar().play(), Qt::LeftButton);
  CHECK(player.is_playing());
  CHECK(pages[10] == 0);
  REQUIRE(QTest::qWaitFor([&] { return !player.is_playing(); }, patience_ms));
  CHECK(opened.at() == 10);
}

TEST_CASE("pause holds the step, and the window answers while the lesson plays") {
  OpenedLesson opened;
  LessonPlayer& player = opened.teach.player();
  player.set_tempo(0.02);
  StageView& stage = opened.window.stage();
  stage.setFocus();
  opened.press(&stage, Qt::Key_Space);
  REQUIRE(player.is_playing());
  REQUIRE(QTest::qWaitFor([&] { return opened.at() == 1; }, patience_ms));
  const auto before = stage.gaze();
  opened.press(&stage, Qt::Key_Left);  // looked around meanwhile
  CHECK((stage.gaze().toward_eye - before.toward_eye).norm() > 0.01);
  CHECK(player.is_playing());
  opened.press(&stage, Qt::Key_Space);
  CHECK_FALSE(player.is_playing());
  const int held = opened.at();
  QTest::qWait(1000);  // longer than three steps at this tempo
  CHECK(opened.at() == held);
  opened.press(&stage, Qt::Key_Space);
  REQUIRE(QTest::qWaitFor([&] { return opened.at() > held; }, patience_ms));
  // Out of sight, it does not play on.
  QTest::mouseClick(opened.window.mode_button(Mode::worksheet), Qt::LeftButton);
  CHECK_FALSE(player.is_playing());
}

TEST_CASE("leaving Teach gives the worksheet's stage back as it was") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  for (const auto step : {Worksheet::measure_index, Worksheet::search_index, Worksheet::site_index}) {
    w.worksheet().go_to(step);
    QTest::qWait(30);
    const QImage before = w.stage().picture();
    const auto labels = w.stage().stage().labels().size();
    const auto gaze = w.stage().gaze();
    const QString status = w.status_text();
    const std::string case_file = opened.case_text();
    QTest::mouseClick(w.mode_button(Mode::teach), Qt::LeftButton);
    opened.teach.player().go_to(5);
    // Nothing on the lesson's stage moves the worksheet's coil: neither a spot clicked nor keys.
    for (const auto& spot : w.session().plan().grid)
      QTest::mouseClick(&w.stage(), Qt::LeftButton, Qt::NoModifier,
                        w.stage().position_of(spot.placement.pulse).toPoint());
    w.stage().setFocus();
    QTest::keyClick(&w.stage(), Qt::Key_Right, Qt::ControlModifier);
    opened.teach.panel().what_if()->button(WhatIfControls::turned)->click();
    QTest::mouseClick(w.mode_button(Mode::worksheet), Qt::LeftButton);
    QTest::qWait(30);
    CHECK(w.worksheet().isVisible());
    CHECK_FALSE(opened.teach.panel().isVisible());
    CHECK_FALSE(opened.teach.bar().isVisible());
    CHECK(w.stage().stage().labels().size() == labels);
    CHECK(w.stage().gaze().toward_eye.isApprox(gaze.toward_eye, 1e-6));
    CHECK(w.status_text() == status);
    CHECK(opened.case_text() == case_file);
    CHECK_FALSE(w.session().history().can_undo());
    CHECK(w.stage().picture() == before);
  }
}

TEST_CASE("a case changed in the middle of the lesson is the case the lesson is about") {
  OpenedLesson opened;
  Session& session = opened.window.session();
  opened.teach.player().go_to(3);
  CHECK(opened.teach.bar().caption().contains("left ear"));
  session.change("Side",
                 [](models::CaseFile& case_file) { case_file.the_case.side = geometry::Side::right; });
  CHECK(opened.at() == 3);
  CHECK(opened.teach.bar().caption().contains("right ear"));
  opened.pick(WhatIfControls::vertex);
  const double before = opened.teach.outcome()->result.off_mm;
  session.change("Lateral", [](models::CaseFile& case_file) { case_file.the_case.search.lateral_mm = 80; });
  REQUIRE(opened.teach.outcome());
  CHECK(opened.teach.outcome()->result.off_mm < before - 0.5);  // nearer to the ear it moves by less
  CHECK(
      opened.teach.outcome()->result.off_mm ==
      Approx(geometry::if_vertex_off(session.head().head, session.case_file().the_case, session.plan(), 10, 0)
                 .off_mm));
  QTest::keyClick(&opened.window, Qt::Key_Z, Qt::ControlModifier);
  CHECK(opened.teach.outcome()->result.off_mm == Approx(before));

  // A treatment site that is a landmark has no tape to be misread.
  opened.pick(WhatIfControls::tape);
  CHECK(opened.teach.panel().what_if()->which_tape()->chosen() == 2);
  session.change("Landmark", [](models::CaseFile& case_file) {
    case_file.the_case.treatment = {geometry::TreatmentRule::landmark, 50, "F4"};
  });
  CHECK_FALSE(opened.teach.panel().what_if()->which_tape()->button(2)->isEnabled());
  CHECK(opened.teach.panel().what_if()->problem().isEmpty());
  CHECK(opened.teach.outcome());
  opened.teach.player().go_to(7);
  CHECK(opened.teach.bar().caption().contains("F4"));
}

TEST_CASE("the lesson is given on a scanned head as well") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  const geometry::Head generic = w.session().head().head;
  const QString file = opened.folder.filePath("scan.ply");
  models::write_ply(file.toStdString(), generic.skin());
  w.set_mode(Mode::teach);
  w.files().open_path(file);
  opened.settle();
  // Its four points come first, and from the worksheet.
  REQUIRE(w.session().unplaced());
  CHECK(w.mode() == Mode::worksheet);
  CHECK_FALSE(w.mode_button(Mode::teach)->isEnabled());
  geometry::Fiducials known = generic.fiducials().at;
  for (const Fiducial each : all_fiducials) w.session().place(each, point_of(known, each));
  REQUIRE(w.session().use_placed().isEmpty());
  opened.settle();
  QTest::mouseClick(w.mode_button(Mode::teach), Qt::LeftButton);
  REQUIRE(w.mode() == Mode::teach);
  for (int i = 0; i < 11; ++i) {
    opened.teach.player().go_to(i);
    CHECK_FALSE(opened.teach.bar().caption().isEmpty());
  }
  opened.teach.panel().what_if()->button(WhatIfControls::turned)->click();
  REQUIRE(opened.teach.outcome());
  CHECK(opened.teach.outcome()->result.off_mm > 5);
}

TEST_CASE("the lesson's type is large, and it keeps the stage's size from step to step") {
  for (const QSize size : {QSize(1280, 800), QSize(1920, 1080)}) {
    OpenedLesson opened;
    opened.window.resize(size);
    QTest::qWait(50);
    opened.teach.player().go_to(0);  // the type has its new size and the layout has followed
    QTest::qWait(50);
    const QSize stage = opened.window.stage().size();
    CHECK(stage.height() > size.height() / 2);
    for (int i = 0; i < 11; ++i) {
      opened.teach.player().go_to(i);
      QTest::qWait(5);
      CHECK(opened.window.stage().size() == stage);
      const QLabel* caption = opened.teach.bar().caption_label();
      CHECK(caption->font().pixelSize() >= size.height() / 36);
      CHECK(caption->heightForWidth(caption->width()) <= caption->height());
      for (const auto& label : opened.stage().labels())
        CHECK(label.wish.size_px * opened.stage().sight().scale >= 18);
    }
    // All of the steps and what-if controls without scrolling.
    for (QWidget* each : opened.teach.panel().findChildren<QWidget*>()) {
      if (!each->isVisible() || each->focusPolicy() == Qt::NoFocus) continue;
      INFO(each->metaObject()->className() << " " << each->accessibleName().toStdString());
      CHECK(opened.teach.panel().viewport()->rect().contains(
          QRect(each->mapTo(opened.teach.panel().viewport(), QPoint(0, 0)), each->size())));
    }
  }
}

TEST_CASE("a look from aside says what it does, and draws the line of sight from an eye") {
  OpenedLesson opened;
  opened.pick(WhatIfControls::aside);
  REQUIRE(opened.teach.outcome());
  const auto& outcome = *opened.teach.outcome();
  REQUIRE(outcome.result.sight);
  CHECK(outcome.result.off_mm > 2);
  CHECK(opened.teach.bar().caption().contains("from the coil's front, 10"));
  QTest::qWait(30);
  const auto& labels = opened.window.stage().stage().labels();
  CHECK(std::any_of(labels.begin(), labels.end(),
                    [](const viewer::PlacedLabel& l) { return l.wish.text == "eye"; }));
  // A coil that is laid by tape is laid by no look.
  opened.window.session().change(
      "Laid by", [](models::CaseFile& f) { f.the_case.coil.laid_by = geometry::MarkRule::tape; });
  CHECK_FALSE(opened.teach.panel().what_if()->button(WhatIfControls::aside)->isEnabled());
  CHECK_FALSE(opened.teach.outcome());
}
