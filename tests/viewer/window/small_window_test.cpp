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
