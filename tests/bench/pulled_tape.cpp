// How many frames a second are drawn while a tape is pulled over a head in the real window, beside the same
// head with a coil carried over it, and beside a head that is only turned; and what of it is the tape's way
// over the skin, beside the shortest path between its ends. Run by hand: scripts/bench.
#include <algorithm>
#include <chrono>
#include <cstdio>
#include <vector>

#include "geometry/paths/shortest_path.h"
#include "tests/viewer/window/practise_hands.h"

using namespace scalpmark;
using namespace scalpmark::window;
using geometry::Task;

namespace {

constexpr int frames = 90;

double tick_ms() {
  return std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now().time_since_epoch())
      .count();
}

struct Times {
  std::vector<double> ms;
  void report(const char* what) {
    std::sort(ms.begin(), ms.end());
    const double median = ms[ms.size() / 2];
    std::printf("  %-52s median %6.1f ms (%.0f a second), 19 of 20 within %6.1f ms\n", what, median,
                1000 / median, ms[ms.size() * 19 / 20]);
  }
};

/// A drag across the picture, each piece of it drawn.
Times drag_across(OpenedExercise& opened, QPoint from, QPoint to) {
  Times times;
  QTest::mousePress(&opened.stage(), Qt::LeftButton, Qt::NoModifier, from);
  for (int i = 1; i <= frames; ++i) {
    const double begun = tick_ms();
    opened.move_mouse(from + (to - from) * i / frames, Qt::LeftButton);
    QApplication::processEvents();  // the frame comes onto the screen
    if (i > 5) times.ms.push_back(tick_ms() - begun);
  }
  QTest::mouseRelease(&opened.stage(), Qt::LeftButton, Qt::NoModifier, to);
  return times;
}

void bench(QSize window_size) {
  OpenedExercise opened(1, geometry::Side::left, {Task::three_tapes, Task::coil_on_given_marks});
  opened.window.resize(window_size);
  QTest::qWait(200);
  const geometry::Head& head = opened.run().head();
  std::printf("window %d x %d, stage %d x %d, %zu triangles\n", opened.window.width(), opened.window.height(),
              opened.stage().width(), opened.stage().height(), head.skin().triangles().size());
  opened.key(Qt::Key_2);
  opened.key(Qt::Key_T);
  QTest::qWait(200);
  const auto& at = head.fiducials().at;
  const Eigen::Vector3d top = head.skin().position(head.vertex());
  const QPoint tragus = opened.pixel_of(at.left_tragus), vertex = opened.pixel_of(top);
  drag_across(opened, tragus, vertex + QPoint(0, 12)).report("a tape pulled from the tragus to the top");
  const std::vector<Eigen::Vector3d> held = opened.run().tape()->held_at;
  opened.key(Qt::Key_Escape);
  drag_across(opened, tragus, tragus + QPoint(160, 40)).report("the head turned, the tape lying on it");
  opened.key(Qt::Key_T);
  opened.key(Qt::Key_Delete);
  opened.key(Qt::Key_Escape);
  drag_across(opened, tragus, tragus + QPoint(160, 40)).report("the head turned, bare");

  Times pulled, shortest;
  const geometry::SurfacePoint a = head.skin().closest(held.front());
  for (int i = 0; i < 40; ++i) {
    const Eigen::Vector3d to =
        head.skin().position(head.skin().closest(held.back() + 0.5 * i * head.axes().front));
    double begun = tick_ms();
    (void)geometry::pull_tape(head, {held.front(), to});
    pulled.ms.push_back(tick_ms() - begun);
    begun = tick_ms();
    (void)geometry::shortest_path(head.skin(), a, head.skin().closest(to));
    shortest.ms.push_back(tick_ms() - begun);
  }
  pulled.report("of it the tape's way over the skin");
  shortest.report("the same by the shortest path (Xin and Wang 2009)");

  opened.next_task();
  QTest::qWait(200);
  const geometry::Placement now = opened.run().coil()->placement;
  const QPoint pulse = opened.pixel_of(now.pulse);
  const QPoint handle =
      opened.pixel_of(now.pulse + now.lift_mm * now.normal - 100 * now.front + 36 * now.normal);
  drag_across(opened, handle, handle + QPoint(-60, 60)).report("the coil carried by its handle");
  const QPoint moved = opened.pixel_of(opened.run().coil()->placement.pulse) - pulse;
  std::printf("  (the coil went %d, %d pixels)\n", moved.x(), moved.y());
}

}  // namespace

int main(int argc, char** argv) {
  const TestSession session(argc, argv);
  bench({1280, 800});
  bench({1920, 1080});
}
