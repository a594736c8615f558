// In the smallest window what matters on the stage has its name, in either language.
#include <algorithm>
#include <catch2/catch.hpp>

#include "tests/viewer/window/in_german.h"
#include "tests/viewer/window/opened_window.h"

using namespace scalpmark;
using namespace scalpmark::window;

TEST_CASE(
    "in the smallest window site and edge mark have their names, drawn by one rule and laid by another") {
  const bool in_german = GENERATE(false, true);
  const geometry::Side side = GENERATE(geometry::Side::left, geometry::Side::right);
  const InGerman german(in_german);
  models::CaseFile file = demo_case();
  file.the_case.side = side;
  file.the_case.coil.laid_by = geometry::MarkRule::tape;
  OpenedWindow opened(file);
  MainWindow& w = opened.window;
  w.resize(960, 620);
  OpenedWindow::wait_until([&] { return w.size() == QSize(960, 620); });
  w.worksheet().go_to(Worksheet::site_index);
  opened.settle();
  (void)w.stage().picture();
  const viewer::Stage& stage = w.stage().stage();
  const auto is_said = [&](const std::string& words) {
    const auto& labels = stage.labels();
    const auto& captions = stage.captions();
    return std::any_of(labels.begin(), labels.end(),
                       [&](const auto& label) { return label.wish.text.find(words) != std::string::npos; }) ||
           std::any_of(captions.begin(), captions.end(), [&](const auto& caption) {
             return !caption.is_legend && caption.text.find(words) != std::string::npos &&
                    caption.box.height() < 30;  // a line of its own
           });
  };
  std::string all;
  for (const auto& label : stage.labels()) all += label.wish.text + "; ";
  for (const auto& caption : stage.captions()) all += "[" + caption.text + "] ";
  CAPTURE(in_german, side, all);
  CHECK(is_said(in_german ? "Behandlungsort" : "reatment site"));
  CHECK(is_said(in_german ? "Kantenmarke" : "dge mark"));
}

TEST_CASE("no step of the worksheet is wider than its place, in either language and unit") {
  const bool in_german = GENERATE(false, true);
  int buttons = 0;
  const InGerman german(in_german);
  models::CaseFile file = demo_case();
  file.the_case.side = geometry::Side::right;
  // With answers there is more to press: the best spot, its centre, what to try next.
  geometry::Visit visit;
  visit.date = {2026, 11, 26};
  for (const int percent : {60, 55, 50, 48})
    for (const geometry::GridPosition spot : {geometry::GridPosition{0, 0}, {1, 0}, {0, 1}})
      visit.pulses.push_back({spot,
                              percent,
                              percent > 50 ? geometry::SeenAnswer::thumb : geometry::SeenAnswer::none,
                              geometry::TimeOfDay{10, 32, 5},
                              {}});
  file.the_case.visits.emplace_back(visit);
  OpenedWindow opened(file);
  MainWindow& w = opened.window;
  w.resize(960, 620);
  w.log().show_visit(0);
  w.set_unit(in_german ? LengthUnit::centimetre : LengthUnit::inch);
  OpenedWindow::wait_until([&] { return w.size() == QSize(960, 620); });
  for (const auto index :
       {Worksheet::measure_index, Worksheet::landmarks_index, Worksheet::search_index,
        Worksheet::pulses_index, Worksheet::site_index, Worksheet::check_index, Worksheet::save_index}) {
    w.worksheet().go_to(index);
    opened.settle();
    const QWidget* panel = w.worksheet().widget();
    const int room = w.worksheet().viewport()->width();
    for (const QWidget* each : panel->findChildren<QWidget*>()) {
      if (!each->isVisible()) continue;
      buttons += index == Worksheet::pulses_index && qobject_cast<const QPushButton*>(each) ? 1 : 0;
      CAPTURE(in_german, index, each->metaObject()->className(), each->accessibleName().toStdString(),
              each->minimumSizeHint().width());
      CHECK(each->mapTo(panel, QPoint(each->width(), 0)).x() <= room);
    }
    CHECK(panel->width() <= room);
  }
  CHECK(buttons > 20);
  // What a heading leaves out is said where the mouse rests on it.
  int cut = 0;
  for (const auto index : {Worksheet::measure_index, Worksheet::landmarks_index, Worksheet::search_index}) {
    const QPushButton* heading = w.worksheet().step(index)->heading();
    CHECK(heading->text().endsWith(QStringLiteral("\u2026")) == !heading->toolTip().isEmpty());
    CHECK(heading->sizeHint().width() <= heading->width());
    cut += heading->toolTip().isEmpty() ? 0 : 1;
  }
  CHECK((in_german || cut == 1));
  w.set_unit(LengthUnit::centimetre);
}
