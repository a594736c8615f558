// How long one step of dragging the coil takes in the real window, on the template MRI head: what is computed
// and what is drawn, and how often as long that is as a bare VTK renderer takes to draw the same skin alone,
// by turns with it. Run by hand: scripts/bench.
#include <vtkCallbackCommand.h>
#include <vtkRenderWindow.h>
#include <vtkRendererCollection.h>

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <ctime>
#include <string>
#include <vector>

#include "tests/bench/bare_renderer.h"
#include "tests/viewer/window/opened_window.h"
#include "viewer/window/frame/status_line.h"

using namespace scalpmark;
using namespace scalpmark::window;

namespace {

constexpr int steps = 60;

double now_ms() {
  return std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now().time_since_epoch())
      .count();
}

double cpu_ms() {
  return 1000.0 * static_cast<double>(std::clock()) / CLOCKS_PER_SEC;
}

double middle(std::vector<double> all) {
  std::sort(all.begin(), all.end());
  return all[all.size() / 2];
}

double most(std::vector<double> all) {  // but for one in twenty
  std::sort(all.begin(), all.end());
  return all[all.size() * 19 / 20];
}

void report(const char* what, const std::vector<double>& wall, const std::vector<double>& cpu) {
  std::printf("  %-34s median %6.1f ms, 19 of 20 within %6.1f ms; CPU %6.1f ms\n", what, middle(wall),
              most(wall), middle(cpu));
}

/// Drags the coil in a window in which the stage has this size.
void drag(OpenedWindow& opened, QSize stage_size) {
  MainWindow& w = opened.window;
  StageView& stage = w.stage();
  w.resize(w.size() + stage_size - stage.size());
  w.worksheet().go_to(Worksheet::site_index);
  // From the site each time: the further away, the longer the tape that is measured.
  QTest::keyClick(&w, Qt::Key_Escape);
  QTest::qWait(200);
  stage.look(viewer::View::square_on);
  QTest::qWait(200);
  const geometry::Placement planned = w.session().plan().treatment;
  const Eigen::Vector3d right = planned.front.cross(planned.normal);
  const QPoint from =
      stage.position_of(planned.pulse + planned.lift_mm * planned.normal + 40 * right).toPoint();
  int frames = 0;
  vtkNew<vtkCallbackCommand> count;
  count->SetClientData(&frames);
  count->SetCallback([](vtkObject*, unsigned long, void* data, void*) { ++*static_cast<int*>(data); });
  const auto observer = stage.render_window()->AddObserver(vtkCommand::StartEvent, count);

  bench::BareRenderer bare(w.session().thin_skin().value(), stage.size() * stage.devicePixelRatioF());
  bare.look_as(*stage.render_window()->GetRenderers()->GetFirstRenderer());
  std::vector<double> all, all_cpu, solve, solve_cpu, site, site_cpu, draw, draw_cpu, alone, alone_cpu, ratio;
  QTest::mousePress(&stage, Qt::LeftButton, Qt::NoModifier, from);
  for (int i = 1; i <= steps; ++i) {
    const QPoint at = from + QPoint(i, i / 2);
    QMouseEvent move(QEvent::MouseMove, at, stage.mapToGlobal(at), Qt::NoButton, Qt::LeftButton,
                     Qt::NoModifier);
    double wall = now_ms(), cpu = cpu_ms();
    QApplication::sendEvent(&stage, &move);
    QApplication::processEvents();  // the frame comes onto the screen
    all.push_back(now_ms() - wall);
    all_cpu.push_back(cpu_ms() - cpu);
    if (!w.coil().in_hand()) {  // the first pixels are not a drag yet
      frames = 0;
      continue;
    }
    // The same computed once more, on its own.
    wall = now_ms(), cpu = cpu_ms();
    const auto held =
        hold_coil(w.session().head(), w.session().case_file().the_case, w.coil().at, {}, w.session().tapes());
    solve.push_back(now_ms() - wall);
    solve_cpu.push_back(cpu_ms() - cpu);
    wall = now_ms(), cpu = cpu_ms();
    (void)pulse_from_site_mm(w.session().head().head.skin(), w.session().plan(), *held->placement);
    site.push_back(now_ms() - wall);
    site_cpu.push_back(cpu_ms() - cpu);
    draw.push_back(all.back() - solve.back() - site.back());
    draw_cpu.push_back(all_cpu.back() - solve_cpu.back() - site_cpu.back());
    wall = now_ms(), cpu = cpu_ms();
    bare.draw();
    alone.push_back(now_ms() - wall);
    alone_cpu.push_back(cpu_ms() - cpu);
    ratio.push_back(all.back() / alone.back());
  }
  QTest::mouseRelease(&stage, Qt::LeftButton, Qt::NoModifier, from + QPoint(steps, steps / 2));
  stage.render_window()->RemoveObserver(observer);
  std::printf("stage %d x %d, %zu triangles computed on, %.2f frames a step\n", stage.width(), stage.height(),
              w.session().head().head.skin().triangles().size(),
              static_cast<double>(frames) / static_cast<double>(solve.size()));
  report("one drag step", all, all_cpu);
  report("  lay the coil (solve)", solve, solve_cpu);
  report("  tape distance from the site (solve)", site, site_cpu);
  report("  draw", draw, draw_cpu);
  report("bare VTK renderer, the skin alone", alone, alone_cpu);
  std::printf("  a drag step takes %.2f times as long (median of the pairs)\n", middle(ratio));
}

}  // namespace

int main(int argc, char** argv) {
  const TestSession bench(argc, argv);
  const models::CaseFile case_file =
      models::read_case(std::string(SCALPMARK_SOURCE_DIR) + "/models/demo/template-mri.json");
  const double begun = now_ms();
  OpenedWindow opened(case_file);
  std::printf("head loaded, tape distances worked out: %.1f s\n", (now_ms() - begun) / 1000);
  const double fields_begun = now_ms();
  opened.window.session().want_fields();
  opened.settle();
  std::printf("distance fields worked out: %.1f s\n", (now_ms() - fields_begun) / 1000);
  drag(opened, {900, 660});
  drag(opened, {1280, 800});
  opened.window.set_field(true);
  std::printf("with the induced field\n");
  drag(opened, {1280, 800});
  opened.window.set_field(false);
  const double cortex_begun = now_ms();
  opened.window.set_skin_opacity(viewer::skin_over_cortex);
  opened.settle();
  std::printf("brain under the skin: %.1f s\n", (now_ms() - cortex_begun) / 1000);
  drag(opened, {1280, 800});
  opened.window.set_field(true);
  std::printf("with the induced field on it\n");
  drag(opened, {1280, 800});
}
