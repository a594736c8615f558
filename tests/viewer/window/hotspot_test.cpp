#include <catch2/catch.hpp>

#include "tests/viewer/window/opened_window.h"
#include "viewer/sheet/content.h"

using namespace scalpmark;
using namespace scalpmark::window;

namespace {

bool stage_says(MainWindow& w, const std::string& text) {
  const auto& labels = w.stage().stage().labels();
  return std::any_of(labels.begin(), labels.end(), [&](const viewer::PlacedLabel& label) {
    return label.wish.text.find(text) != std::string::npos;
  });
}

bool shows_ring(MainWindow& w) {
  const auto marks = w.stage().stage().marks();
  return std::any_of(marks.begin(), marks.end(),
                     [](const auto& mark) { return mark.shape == viewer::Shape::ring; });
}

}  // namespace

TEST_CASE("until a spot has answered the hotspot is not found, and the site is an if") {
  OpenedWindow opened(models::default_case());
  MainWindow& w = opened.window;
  const auto now = [&]() -> const geometry::Case& { return w.session().case_file().the_case; };
  REQUIRE(now().hotspot_awaited);
  SiteStep* treat = w.worksheet().site();
  w.worksheet().go_to(Worksheet::site_index);
  QTest::qWait(50);
  CHECK(treat->hotspot_heading().contains("not found yet"));
  for (const int row : {-1, 0, 1})
    for (const int column : {-1, 0, 1}) CHECK_FALSE(treat->hotspot()->button(row, column)->isChecked());
  CHECK(stage_says(w, "if that one answers"));
  CHECK_FALSE(shows_ring(w));
  CHECK(opened.case_text().find("hotspot") == std::string::npos);
  const auto& warnings = w.session().plan().warnings;
  CHECK(std::any_of(warnings.begin(), warnings.end(), [](const geometry::Message& warning) {
    return english(warning).find("only if the middle spot answers") != std::string::npos;
  }));
  // Marks that agree with a site that nobody knows yet are no agreement.
  mark_today(w, 0);
  REQUIRE(w.visit().check());
  CHECK(w.worksheet().check()->verdict().kind == VerdictText::Kind::unsure);

  // Tried in the search, taken there, and carried over.
  w.worksheet().go_to(Worksheet::search_index);
  SearchStep* search = w.worksheet().search();
  QTest::mouseClick(search->spots()->button(1, 0), Qt::LeftButton);
  CHECK(now().hotspot_awaited);  // only looked at
  QTest::mouseClick(search->answered(), Qt::LeftButton);
  CHECK_FALSE(now().hotspot_awaited);
  CHECK(now().hotspot == geometry::GridPosition{1, 0});
  CHECK_FALSE(search->answered()->isEnabled());
  CHECK(treat->hotspot()->button(1, 0)->isChecked());
  CHECK(search->spots()->button(1, 0)->accessibleName().contains("hotspot"));
  CHECK(search->spots()->button(1, 0)->text() == treat->hotspot()->button(1, 0)->text());
  w.worksheet().go_to(Worksheet::site_index);
  QTest::qWait(50);
  CHECK(shows_ring(w));
  CHECK_FALSE(stage_says(w, "if that one answers"));
  CHECK(opened.case_text().find("hotspot") != std::string::npos);
  CHECK(w.worksheet().check()->verdict().kind != VerdictText::Kind::unsure);
  CHECK(models::parse_case(opened.case_text(), {}, "the case").the_case == now());

  w.undo_list().undo();
  CHECK(now().hotspot_awaited);
}

TEST_CASE("a person without tapes has none: the built-in head's are not shown as theirs") {
  OpenedWindow opened(models::default_case());
  MainWindow& w = opened.window;
  const auto heading = [&] { return w.worksheet().measure()->heading()->accessibleDescription(); };
  CHECK(heading() == "no tapes yet");
  opened.type(w.worksheet().measure()->nasion_inion()->edit(), "36.2");
  opened.settle();
  CHECK(heading().startsWith("36.2 | none | none"));
}

TEST_CASE("a spot taken from the pulses that were logged is a hotspot that was found, the middle one too") {
  OpenedWindow opened(models::default_case());
  MainWindow& w = opened.window;
  w.worksheet().go_to(Worksheet::pulses_index);
  QTest::qWait(20);
  PulsesStep& step = *w.worksheet().pulses();
  for (int pulse = 0; pulse < 3; ++pulse) QTest::keyClick(step.panel(), Qt::Key_1);
  REQUIRE(step.take_best()->isEnabled());
  CHECK(w.session().case_file().the_case.hotspot_awaited);
  QTest::mouseClick(step.take_best(), Qt::LeftButton);
  CHECK_FALSE(w.session().case_file().the_case.hotspot_awaited);
  CHECK(w.session().case_file().the_case.hotspot == geometry::GridPosition{0, 0});
  CHECK_FALSE(step.take_best()->isEnabled());
  // The coil that follows the log is nothing to take back: the last thing done is the hotspot, before it the
  // pulses.
  w.undo_list().undo();
  CHECK(w.session().case_file().the_case.hotspot_awaited);
  w.undo_list().undo();
  CHECK(w.session().case_file().the_case.visits.front()->pulses.size() == 2);
}
