// What forty visits of 200 pulses each cost in the real window: opening their case beside one without any,
// logging one more pulse, and the course. Run by hand: scripts/bench.
#include <algorithm>
#include <chrono>
#include <cstdio>
#include <random>
#include <vector>

#include "tests/viewer/window/opened_window.h"

using namespace scalpmark;
using namespace scalpmark::window;

namespace {

constexpr int visits = 40, pulses = 200;

double clock_ms() {
  return std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now().time_since_epoch())
      .count();
}

template <class Work>
double median_ms(int times, Work&& work) {
  std::vector<double> all;
  for (int i = 0; i < times; ++i) {
    const double begun = clock_ms();
    work();
    all.push_back(clock_ms() - begun);
  }
  std::sort(all.begin(), all.end());
  return all[all.size() / 2];
}

models::CaseFile with_visits(const geometry::Placement& planned) {
  std::mt19937 random(3);
  models::CaseFile made = demo_case();
  for (int i = 0; i < visits; ++i) {
    geometry::Visit visit;
    visit.date = {2026, 1 + i / 28, 1 + i % 28};
    for (int k = 0; k < pulses; ++k)
      visit.pulses.push_back({geometry::spiral[static_cast<std::size_t>(k) % 9],
                              40 + static_cast<int>(random() % 20),
                              static_cast<geometry::SeenAnswer>(random() % 4),
                              geometry::TimeOfDay{10, k / 60, k % 60},
                              {}});
    const auto read = [&](double mm) { return mm + static_cast<double>(random() % 5) - 2; };
    const auto tapes = [&](const geometry::TapeFrom& from) {
      return geometry::TapeReadings{read(from.vertex_mm), read(from.nasion_mm), read(from.left_tragus_mm),
                                    read(from.right_tragus_mm)};
    };
    visit.site_tape = tapes(*planned.pulse_tape);
    visit.edge_tape = tapes(*planned.edge_mark_tape);
    made.the_case.visits.emplace_back(visit);
  }
  return made;
}

void run() {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  w.resize(1280, 800);
  const models::CaseFile full = with_visits(w.session().plan().treatment);
  const std::string none = opened.folder.filePath("none.json").toStdString();
  const std::string many = opened.folder.filePath("many.json").toStdString();
  models::write_case(none, demo_case());
  models::write_case(many, full);
  const auto open = [&](const std::string& file) {
    return median_ms(9, [&] {
      w.session().open(QString::fromStdString(file));
      OpenedWindow::wait_until([&] { return w.session().is_ready(); });
      QApplication::processEvents();
    });
  };
  const double without = open(none);
  std::printf("  %-46s %7.1f ms\n", "open a case without visits, drawn", without);
  std::printf("  %-46s %7.1f ms more, %lld bytes\n", "the same with 40 visits of 200 pulses",
              open(many) - without, static_cast<long long>(QFileInfo(QString::fromStdString(many)).size()));
  opened.settle();
  w.worksheet().go_to(Worksheet::pulses_index);
  QTest::qWait(200);
  w.session().open(QString::fromStdString(many));
  opened.settle();
  const auto key = [&] {
    QTest::keyClick(w.worksheet().pulses()->panel(), Qt::Key_1);
    QApplication::processEvents();
  };
  std::printf("  %-46s %7.1f ms\n", "a pulse logged by its key, on disk and drawn", median_ms(41, key));
  w.session().start(demo_case());
  opened.settle();
  std::printf("  %-46s %7.1f ms\n", "the same in a case without visits", median_ms(41, key));
  const geometry::Head& head = w.session().head().head;
  (void)head.fields();
  const geometry::TapeFinder finder(head);
  std::printf("  %-46s %7.1f ms\n", "the course of the 40 visits", median_ms(3, [&] {
                (void)geometry::check_course(finder, head, full.the_case, w.session().plan());
              }));
}

}  // namespace

int main(int argc, char** argv) {
  const TestSession session(argc, argv);
  run();
  return 0;
}
