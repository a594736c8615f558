// How long somebody at the window waits: for it to come up, for another side, another step, a sheet, the
// first figure by hand. Wall-clock times of one run. Run by hand: build/bench_window_times
#include <cstdio>

#include "tests/viewer/window/opened_window.h"

using namespace scalpmark;
using namespace scalpmark::window;

namespace {

void tell(const char* what, qint64 ms) {
  std::printf("%-64s %6.2f s\n", what, static_cast<double>(ms) / 1000);
}

}  // namespace

int main(int argc, char** argv) {
  QElapsedTimer since;
  TestSession session(argc, argv);
  since.start();
  MainWindow window;
  window.session().set_locks_when_kept(false);
  window.files().ask_unsaved = [] { return UnsavedAnswer::discard; };
  window.stage().set_animated(false);
  window.show();
  if (!QTest::qWaitForWindowExposed(&window)) return 1;
  QTest::qWait(1);
  tell("first paint of the window", since.elapsed());
  window.session().start(demo_case());
  OpenedWindow::wait_until([&] { return window.session().is_ready(); });
  (void)window.stage().picture();
  tell("window with the demo case on the stage, to be worked in", since.elapsed());
  OpenedWindow::wait_until([&] { return window.session().has_tapes() && !window.session().is_working(); });
  tell("the same with its tape distances", since.elapsed());

  const auto time = [&](const char* what, const std::function<void()>& act) {
    since.restart();
    act();
    QCoreApplication::processEvents();
    tell(what, since.elapsed());
  };
  for (const auto& [name, step] :
       {std::pair("step: search", Worksheet::search_index), std::pair("step: site", Worksheet::site_index),
        std::pair("step: check", Worksheet::check_index),
        std::pair("step: measure", Worksheet::measure_index)})
    time(name, [&, at = step] { window.worksheet().go_to(at); });
  window.worksheet().go_to(Worksheet::search_index);
  time("the other side, on the stage", [&] { window.worksheet().search()->side()->button(1)->click(); });
  OpenedWindow::wait_until([&] { return window.session().has_tapes() && !window.session().is_working(); });
  tell("the same with its tape distances", since.elapsed());

  window.worksheet().go_to(Worksheet::check_index);
  since.restart();
  mark_today(window, 10);
  OpenedWindow::wait_until([&] { return window.by_hand().found() != nullptr; });
  tell("by hand: a first figure", since.elapsed());
  OpenedWindow::wait_until([&] { return !window.by_hand().is_working(); });
  tell("by hand: refined", since.elapsed());

  QTemporaryDir folder;
  since.restart();
  window.output().save_sheet_to(folder.filePath("sheet.pdf"), viewer::Paper::a4);
  OpenedWindow::wait_until([&] { return !window.output().is_writing(); });
  tell("a sheet", since.elapsed());
  return 0;
}
