// Each step's stage shows what the step is about; the rest comes when it is asked for.
#include <QTableWidget>
#include <catch2/catch.hpp>

#include "tests/viewer/window/opened_window.h"

using namespace scalpmark;
using namespace scalpmark::window;

namespace {

std::vector<std::string> labels_of(MainWindow& w) {
  (void)w.stage().picture();
  std::vector<std::string> texts;
  for (const auto& label : w.stage().stage().labels()) texts.push_back(label.wish.text);
  return texts;
}

bool any_begins(const std::vector<std::string>& texts, const std::string& begins) {
  return std::any_of(texts.begin(), texts.end(), [&](const std::string& t) { return t.starts_with(begins); });
}

}  // namespace

TEST_CASE("Site names site, hotspot and the mark to lay by, another site when it is picked in the list") {
  for (const bool left : {true, false}) {
    OpenedWindow opened;
    MainWindow& w = opened.window;
    if (!left) w.worksheet().search()->side()->button(1)->click();
    w.worksheet().go_to(Worksheet::site_index);
    opened.settle();
    w.stage().look(viewer::View::square_on, 0);
    const auto before = labels_of(w);
    CHECK(any_begins(before, "Treatment site, 5.0 cm forward of the hotspot"));
    CHECK(any_begins(before, "Edge mark, "));
    CHECK(any_begins(before, "Hotspot"));
    CHECK(before.size() <= 6);
    CHECK_FALSE(any_begins(before, "5.5 cm forward"));
    QTableWidget* others = w.worksheet().site()->alternatives();
    for (int row = 0; row < others->rowCount(); ++row)
      if (others->item(row, 0)->text() == "5.5 cm forward") others->selectRow(row);
    CHECK(any_begins(labels_of(w), "5.5 cm forward: 0.5 cm from the site"));
  }
}

TEST_CASE(
    "Measure shows the three tapes and no line of a later step, Save what its numbers are measured from") {
  OpenedWindow opened;
  const Worksheet& sheet = opened.window.worksheet();
  CHECK(sheet.step(Worksheet::measure_index)->stage_content({}).shown.lines ==
        std::set<std::string>{"midline", "coronal", "circumference"});
  CHECK(sheet.step(Worksheet::search_index)->stage_content({}).shown.lines ==
        std::set<std::string>{"lateral", "anterior"});
  CHECK(sheet.step(Worksheet::save_index)->stage_content({}).shown.landmarks ==
        std::set<std::string>{"Nz", "Cz"});
}
