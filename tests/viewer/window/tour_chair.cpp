#include "tests/viewer/window/tour_chair.h"

namespace scalpmark::window {

namespace {

void at_the_chair(OpenedWindow& opened, const std::function<void(const char*)>& snap) {
  MainWindow& w = opened.window;
  const auto step = [&](Worksheet::StepIndex index, const char* name) {
    w.worksheet().go_to(index);
    snap(name);
  };
  step(Worksheet::site_index, "60-site");
  w.stage().setFocus();
  for (int i = 0; i < 4; ++i)
    QTest::keyClick(&w.stage(), Qt::Key_Down, Qt::ControlModifier | Qt::ShiftModifier);
  snap("61-in-the-hand");
  step(Worksheet::save_index, "62-save-with-coil-in-hand");
  w.next_mark().begin(viewer::find_again(w.session().plan()));
  snap("63-numbers-across-the-room");
  w.next_mark().hide();
  w.worksheet().go_to(Worksheet::site_index);
  QTest::keyClick(&w.stage(), Qt::Key_Escape);
  w.worksheet().go_to(Worksheet::check_index);
  mark_today(w, 12);
  OpenedWindow::wait_until([&] { return !w.by_hand().is_working(); });
  snap("64-check-move");
  w.set_mode(Mode::check);
  snap("65-check-mode-move");
  w.set_mode(Mode::worksheet);
  step(Worksheet::search_index, "66-search");
  w.worksheet().ensureWidgetVisible(w.worksheet().search()->rules());
  snap("67-search-rules");
  w.worksheet().go_to(Worksheet::landmarks_index);
  opened.type(w.worksheet().landmarks()->find(), "F3");
  snap("68-landmark-by-tapes");
  w.session().start(models::default_case());
  opened.settle();
  step(Worksheet::measure_index, "69-new-measure");
  step(Worksheet::search_index, "70-new-search");
  step(Worksheet::site_index, "71-hotspot-not-found");
}

void on_the_wall(OpenedWindow& opened, const std::function<void(const char*)>& snap) {
  MainWindow& w = opened.window;
  w.session().start(demo_case());
  opened.settle();
  mark_today(w, 12);
  OpenedWindow::wait_until([&] { return !w.by_hand().is_working(); });
  w.menus().show_projected(true);
  w.set_mode(Mode::check);
  snap("72-projected-check");
  w.set_mode(Mode::teach);
  w.teach().player().go_to(4);
  snap("73-projected-lesson");
  w.menus().show_projected(false);
  QTest::mouseClick(w.teach().panel().tools()->why(), Qt::LeftButton);
  w.teach().player().go_to(8);
  snap("74-lesson-rules-and-why");
  w.set_mode(Mode::worksheet);
}

}  // namespace

void tour_chair(OpenedWindow& opened, const std::function<void(const char*)>& snap) {
  MainWindow& w = opened.window;
  at_the_chair(opened, snap);
  on_the_wall(opened, snap);
  w.set_mode(Mode::explain);
  snap("75-explain");
  QTest::mouseClick(w.explain().next(), Qt::LeftButton);
  snap("76-explain-feel");
  w.set_mode(Mode::worksheet);
  emit w.menus().type_size(TypeSize::largest);
  w.worksheet().go_to(Worksheet::search_index);
  snap("77-largest-letters");
  emit w.menus().type_size(TypeSize::usual);
  w.start_page().offer({});
  snap("78-start");
  w.start_page().hide();
}

}  // namespace scalpmark::window
