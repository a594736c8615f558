// The largest letters in the smallest window: the language with the longer words, the other side, a case with
// much to say.
#include <QPushButton>
#include <catch2/catch.hpp>
#include <functional>

#include "models/coils/coil_library.h"
#include "tests/viewer/window/every_screen.h"
#include "tests/viewer/window/in_german.h"
#include "viewer/window/frame/top_bar.h"

using namespace scalpmark;
using namespace scalpmark::window;

namespace {

models::CaseFile much_to_say() {
  models::CaseFile file = demo_case();
  geometry::Case& c = file.the_case;
  c.side = geometry::Side::right;
  c.coil.model = models::coil("angled-8-150");
  c.coil.centre_to_edge_mm = c.coil.model.centre_to_edge_mm;
  c.coil.laid_by = geometry::MarkRule::nearest;
  return file;
}

/// Buttons whose text is cut, or that lie over another.
std::string mistaken_buttons(const QList<QPushButton*>& buttons) {
  std::string wrong;
  for (const QPushButton* button : buttons) {
    if (!button->isVisible()) continue;
    if (button->width() < button->fontMetrics().horizontalAdvance(button->text()) + 12)
      wrong += button->text().toStdString() + " is cut\n";
    for (const QPushButton* other : buttons)
      if (other != button && other->isVisible() && other->geometry().intersects(button->geometry()))
        wrong += button->text().toStdString() + " over " + other->text().toStdString() + "\n";
  }
  return wrong;
}

/// What stands under the stage begins where the stage ends.
void check_stage_whole(MainWindow& w) {
  const StageView& stage = w.stage();
  CHECK(stage.height() >= 220);
  for (const QWidget* other :
       stage.parentWidget()->findChildren<QWidget*>(QString(), Qt::FindDirectChildrenOnly))
    if (other != &stage && other->isVisible() && other->y() > stage.y()) {
      INFO(other->objectName().toStdString());
      CHECK(other->y() >= stage.y() + stage.height());
    }
}

/// No wider than there is room for.
void check_panel(MainWindow& w) {
  const QWidget* panel = w.teach().panel().widget();
  const int room = w.teach().panel().viewport()->width();
  CHECK(panel->width() <= room);
  for (const QWidget* each : panel->findChildren<QWidget*>()) {
    if (!each->isVisible()) continue;
    INFO(each->metaObject()->className() << " " << each->accessibleName().toStdString());
    CHECK(each->mapTo(panel, QPoint(each->width(), 0)).x() <= room);
  }
}

void check_what_ifs(OpenedWindow& opened, const std::function<void(const char*)>& check_screen) {
  MainWindow& w = opened.window;
  WhatIfControls& controls = *w.teach().panel().what_if();
  for (const auto kind :
       {WhatIfControls::vertex, WhatIfControls::tape, WhatIfControls::turned, WhatIfControls::rule,
        WhatIfControls::cap, WhatIfControls::aside, WhatIfControls::off}) {
    if (!controls.button(kind)->isEnabled()) continue;
    controls.button(kind)->click();
    opened.settle();
    INFO("what if " << static_cast<int>(kind));
    check_screen("a what-if");
    check_panel(w);
  }
  controls.clear();
}

void check_everything() {
  OpenedWindow opened(much_to_say());
  MainWindow& w = opened.window;
  emit w.menus().type_size(TypeSize::largest);
  w.resize(960, 620);
  OpenedWindow::wait_until([&] { return w.size() == QSize(960, 620); });
  const auto check_screen = [&](const char* name) {
    QTest::qWait(50);
    INFO(name);
    CHECK_THAT(mistaken_texts(w), Catch::Equals(""));
    check_stage_whole(w);
  };
  for (const auto step : {Worksheet::search_index, Worksheet::site_index, Worksheet::save_index}) {
    w.worksheet().go_to(step);
    opened.settle();
    check_screen("a step");
  }
  CHECK_THAT(mistaken_buttons(w.findChild<TopBar*>()->findChildren<QPushButton*>()), Catch::Equals(""));
  w.set_field(true);
  opened.settle();
  mark_today(w, 12);
  w.set_mode(Mode::check);
  opened.settle();
  check_screen("check, with the field");
  const auto& captions = w.stage().stage().captions();
  CHECK(std::any_of(captions.begin(), captions.end(), [](const viewer::Caption& caption) {
    return caption.text.find("Not this patient's field") != std::string::npos ||
           caption.text.find("Nicht das Feld dieses Patienten") != std::string::npos;
  }));
  w.set_mode(Mode::teach);
  w.teach().player().go_to(w.teach().player().count() - 1);
  check_screen("a lesson");
  CHECK_THAT(mistaken_buttons(w.teach().bar().findChildren<QPushButton*>()), Catch::Equals(""));
  check_panel(w);
  check_what_ifs(opened, check_screen);
  w.set_mode(Mode::worksheet);
  emit w.menus().type_size(TypeSize::usual);
}

}  // namespace

TEST_CASE("the largest letters in the smallest window: nothing is cut and nothing lies over anything else") {
  check_everything();
}

TEST_CASE(
    "the largest letters in the smallest window, in German: nothing is cut and nothing lies over anything else") {
  const InGerman german;
  check_everything();
}
