#include <catch2/catch.hpp>

#include "tests/viewer/window/in_german.h"
#include "tests/viewer/window/opened_window.h"

using namespace scalpmark;
using namespace scalpmark::window;

namespace {

bool is_in_sight(const QScrollArea& area, const QWidget* widget) {
  const QRect there(widget->mapTo(&area, QPoint(0, 0)), widget->size());
  return widget->isVisible() && area.viewport()->rect().contains(there);
}

void resize(OpenedWindow& opened, int width, int height) {
  opened.window.resize(width, height);
  OpenedWindow::wait_until([&] { return opened.window.size() == QSize(width, height); });
  QTest::qWait(100);
}

}  // namespace

TEST_CASE(
    "what a visit needs is in sight at 1280 by 800 without scrolling: the spots, the verdict, the head") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  resize(opened, 1280, 800);
  w.worksheet().go_to(Worksheet::search_index);
  QTest::qWait(100);
  CHECK(is_in_sight(w.worksheet(), w.worksheet().search()->spots()));
  CHECK(is_in_sight(w.worksheet(), w.worksheet().search()->answered()));
  w.set_mode(Mode::check);
  mark_today(w, 20);
  OpenedWindow::wait_until([&] { return w.by_hand().found() && !w.by_hand().is_working(); });
  QTest::qWait(100);
  CHECK(is_in_sight(w.worksheet(), w.worksheet().check()->verdict_label()));
  CHECK(w.stage().height() > 400);
}

TEST_CASE("a small picture from beside the coil tells the three rules apart") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  w.worksheet().go_to(Worksheet::search_index);
  const RulesPicture* rules = w.worksheet().search()->rules();
  REQUIRE(rules->isVisible());
  // As the plan says of the coil on the start.
  const geometry::Placement& start = w.session().plan().start;
  REQUIRE(rules->view());
  CHECK((*rules->view()->drop - rules->view()->edge).norm() == Approx(*start.drop_gap_mm).margin(1.0));
  CHECK(rules->said().contains("drop: "));
  CHECK(rules->said().contains("nearest: "));
  CHECK(rules->said().contains("tape: "));
  const QImage before = const_cast<RulesPicture*>(rules)->grab().toImage();
  QTest::mouseClick(w.worksheet().search()->laid_by()->button(2), Qt::LeftButton);
  opened.settle();
  CHECK(const_cast<RulesPicture*>(rules)->grab().toImage() != before);
}

TEST_CASE("the lesson's step on the edge has that picture too, and says why when asked") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  w.set_mode(Mode::teach);
  for (int i = 0; i < w.teach().player().count(); ++i) {
    w.teach().player().go_to(i);
    CHECK(w.teach().rules().isVisible() ==
          (w.teach().steps()[static_cast<std::size_t>(i)].topic == viewer::LessonTopic::mark_edge));
  }
  const auto edge_step =
      std::find_if(w.teach().steps().begin(), w.teach().steps().end(),
                   [](const auto& step) { return step.topic == viewer::LessonTopic::mark_edge; });
  w.teach().player().go_to(static_cast<int>(edge_step - w.teach().steps().begin()));
  LessonTools* tools = w.teach().panel().tools();
  const QString plain = w.teach().bar().caption();
  QTest::mouseClick(tools->why(), Qt::LeftButton);
  CHECK(w.teach().bar().caption().startsWith(plain));
  CHECK(w.teach().bar().caption().contains("Why: The coil hides its own centre"));
  for (const auto& step : w.teach().steps()) CHECK(step.why.size() > 40);
  QTest::mouseClick(tools->why(), Qt::LeftButton);
  CHECK(w.teach().bar().caption() == plain);
  w.set_mode(Mode::worksheet);
  CHECK_FALSE(w.teach().rules().isVisible());
}

TEST_CASE(
    "the picture of the rules hides no mark of the lesson's, on either side, and nothing is written under it") {
  for (const geometry::Side side : {geometry::Side::left, geometry::Side::right})
    for (const QSize size : {QSize(960, 620), QSize(1280, 800)}) {
      models::CaseFile file = demo_case();
      file.the_case.side = side;
      OpenedWindow opened(file);
      MainWindow& w = opened.window;
      w.resize(size);
      OpenedWindow::wait_until([&] { return w.size() == size; });
      w.set_mode(Mode::teach);
      const auto& steps = w.teach().steps();
      const auto edge_step = std::find_if(steps.begin(), steps.end(), [](const auto& step) {
        return step.topic == viewer::LessonTopic::mark_edge;
      });
      w.teach().player().go_to(static_cast<int>(edge_step - steps.begin()));
      opened.settle();
      QTest::qWait(50);
      (void)w.stage().picture();
      REQUIRE(w.teach().rules().isVisible());
      CAPTURE(side, size.width());
      const QRect under = w.teach().rules().geometry();
      const auto& treatment = w.session().plan().treatment;
      for (const Eigen::Vector3d& mark : {treatment.pulse, *treatment.mark})
        CHECK_FALSE(under.contains(w.stage().position_of(mark).toPoint()));
      const viewer::Box box{static_cast<double>(under.left()), static_cast<double>(under.top()),
                            static_cast<double>(under.right()), static_cast<double>(under.bottom())};
      for (const auto& label : w.stage().stage().labels()) CHECK_FALSE(label.box.overlaps(box));
      for (const auto& caption : w.stage().stage().captions())
        if (!caption.text.empty()) {
          INFO(caption.text);
          CHECK_FALSE(caption.box.overlaps(box));
        }
    }
}

TEST_CASE("a lesson changes sides on the spot, and undo takes that back") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  w.set_mode(Mode::teach);
  w.teach().player().go_to(3);
  REQUIRE(w.teach().bar().caption().contains("left ear"));
  QTest::mouseClick(w.teach().panel().tools()->other_side(), Qt::LeftButton);
  opened.settle();
  CHECK(w.teach().bar().caption().contains("right ear"));
  CHECK(w.teach().player().current() == 3);
  CHECK(w.session().case_file().the_case.side == geometry::Side::right);
  w.undo_list().undo();
  opened.settle();
  CHECK(w.teach().bar().caption().contains("left ear"));
}

TEST_CASE("a lesson's titles are whole in the smallest window, in every step, in either language") {
  const InGerman german(GENERATE(false, true));
  OpenedWindow opened;
  MainWindow& w = opened.window;
  resize(opened, 960, 620);
  w.set_mode(Mode::teach);
  for (int i = 0; i < w.teach().player().count(); ++i) {
    w.teach().player().go_to(i);
    QTest::qWait(20);
    const QLabel* title = w.teach().bar().title_label();
    CHECK(title->width() >= title->fontMetrics().horizontalAdvance(title->text()));
    CHECK(title->height() >= title->fontMetrics().height());
    const QListWidget* list = w.teach().panel().steps();
    CHECK(list->sizeHintForColumn(0) <= list->viewport()->width());
  }
}

TEST_CASE("a lesson plays as fast as it is told to") {
  LessonPlayer player;
  player.set_dwell_ms({400, 100000});
  player.set_tempo(0.5);
  QElapsedTimer since;
  since.start();
  player.play();
  OpenedWindow::wait_until([&] { return player.current() == 1; });
  CHECK(since.elapsed() >= 180);
  CHECK(since.elapsed() < 399);
}

TEST_CASE("work that goes on is said over the stage, which keeps its place and size meanwhile") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  const QRect before = w.stage().geometry();
  w.work().show_work("Working out tape distances", 0.3);
  OpenedWindow::wait_until([&] { return w.work().isVisible(); });
  CHECK(w.stage().geometry() == before);
  CHECK(w.work().geometry().intersects(before));
  CHECK(w.work().cancel()->isVisible());
  w.work().rest();
  CHECK(w.stage().geometry() == before);
}

TEST_CASE("a vertex marked off says what the search by twitch leaves of it") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  w.set_mode(Mode::teach);
  WhatIfControls* what_if = w.teach().panel().what_if();
  QTest::mouseClick(what_if->button(WhatIfControls::vertex), Qt::LeftButton, Qt::NoModifier, QPoint(8, 8));
  REQUIRE(w.teach().outcome());
  REQUIRE(w.teach().outcome()->after_search);
  // A step of the grid at most stays, whichever way it was off by a centimetre or so.
  CHECK(w.teach().outcome()->after_search->search.left_mm < 7.1);  // half the diagonal of a spot's centimetre
  const QString said = w.teach().bar().caption();
  const geometry::SiteAfterSearch& found = *w.teach().outcome()->after_search;
  CHECK(said.contains("Without a search by twitch the site would be off by " +
                      length_with_unit(found.unsearched_mm[0], LengthUnit::centimetre) + " forward"));
  CHECK(said.contains("takes back"));
  CHECK(said.contains("The site is then off by " +
                      length_with_unit(found.off_mm.norm(), LengthUnit::centimetre)));
  // Less than half a step is not noticed.
  QTest::keyClick(what_if->vertex_off()->edit(), Qt::Key_A, Qt::ControlModifier);
  QTest::keyClicks(what_if->vertex_off()->edit(), "0.3");
  QTest::keyClick(what_if->vertex_off()->edit(), Qt::Key_Return);
  CHECK(w.teach().bar().caption().contains("The search by twitch takes back none of it"));
  QTest::mouseClick(what_if->button(WhatIfControls::turned), Qt::LeftButton, Qt::NoModifier, QPoint(8, 8));
  CHECK_FALSE(w.teach().bar().caption().contains("search by twitch"));
}
