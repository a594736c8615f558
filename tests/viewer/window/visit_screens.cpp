#include "tests/viewer/window/visit_screens.h"

namespace scalpmark::window {

namespace {

void scroll_to(OpenedWindow& opened, QWidget* widget) {
  QTest::qWait(100);
  opened.window.worksheet().ensureWidgetVisible(widget, 0, 12);
}

PulsesStep& pulses_of(OpenedWindow& opened) {
  return *opened.window.worksheet().pulses();
}

}  // namespace

std::vector<VisitScreen> visit_screens() {
  return {
      {"50-pulses-empty",
       [](OpenedWindow& opened) { opened.window.worksheet().go_to(Worksheet::pulses_index); }},
      {"51-pulses-mapped",
       [](OpenedWindow& opened) {
         opened.window.session().start(
             models::read_case(SCALPMARK_SOURCE_DIR "/models/demo/twelve-visits.json"));
         opened.settle();
         opened.window.worksheet().go_to(Worksheet::pulses_index);
         opened.window.log().show_visit(0);
         opened.window.log().set_spot({0, 1});
       }},
      {"52-pulses-square-on",
       [](OpenedWindow& opened) { opened.window.stage().look(viewer::View::square_on); }},
      {"53-pulses-threshold", [](OpenedWindow& opened) { scroll_to(opened, pulses_of(opened).threshold()); }},
      {"54-pulses-list-and-settings",
       [](OpenedWindow& opened) { scroll_to(opened, pulses_of(opened).settings()); }},
      {"55-course",
       [](OpenedWindow& opened) {
         opened.window.set_mode(Mode::course);
         OpenedWindow::wait_until([&] {
           const CourseCheck& check = opened.window.course_check();
           return check.found() && !check.is_working();
         });
       }},
      {"56-check-to-keep",
       [](OpenedWindow& opened) {
         opened.window.set_mode(Mode::worksheet);
         opened.window.worksheet().go_to(Worksheet::check_index);
         mark_today(opened.window, 3);
         scroll_to(opened, opened.window.worksheet().check()->keep_button());
       }},
      {"57-pulses-right-in-the-dark",
       [](OpenedWindow& opened) {
         emit opened.window.menus().dark(true);
         opened.window.session().change(
             "Side", [](models::CaseFile& case_file) { case_file.the_case.side = geometry::Side::right; });
         opened.window.worksheet().go_to(Worksheet::pulses_index);
         opened.window.stage().look(viewer::View::right);
       }},
      {"58-pulses-in-the-light-again", [](OpenedWindow& opened) { emit opened.window.menus().dark(false); }}};
}

}  // namespace scalpmark::window
