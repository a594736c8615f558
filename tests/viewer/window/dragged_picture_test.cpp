#include <vtkCamera.h>
#include <vtkRenderWindow.h>
#include <vtkRenderer.h>
#include <vtkRendererCollection.h>

#include <catch2/catch.hpp>

#include "tests/viewer/window/opened_window.h"

using namespace scalpmark;
using namespace scalpmark::window;

namespace {

void move_to(StageView& stage, QPoint at) {
  QMouseEvent move(QEvent::MouseMove, at, stage.mapToGlobal(at), Qt::NoButton, Qt::LeftButton,
                   Qt::NoModifier);
  QApplication::sendEvent(&stage, &move);
}

/// As it is on the screen; asking the stage for a picture would have it drawn as at rest.
QImage on_screen(StageView& stage) {
  QImage seen(stage.size(), QImage::Format_RGB32);
  stage.render(&seen);
  return seen;
}

/// The next picture is drawn whole, as after a turn of the head.
void forget_what_was_drawn(StageView& stage) {
  stage.render_window()->GetRenderers()->GetFirstRenderer()->GetActiveCamera()->Modified();
}

}  // namespace

TEST_CASE("a picture of the coil being dragged is the one that drawing all of it anew gives") {
  const auto [through_skin, with_field] =
      GENERATE(table<bool, bool>({{false, false}, {false, true}, {true, false}, {true, true}}));
  CAPTURE(through_skin, with_field);
  OpenedWindow opened(
      models::read_case(std::string(SCALPMARK_SOURCE_DIR) + "/models/demo/template-mri.json"));
  MainWindow& w = opened.window;
  StageView& stage = w.stage();
  w.worksheet().go_to(Worksheet::site_index);
  if (through_skin) w.set_skin_opacity(viewer::skin_over_cortex);
  opened.settle();
  w.set_field(with_field);
  stage.look(viewer::View::square_on);
  const geometry::Placement planned = w.session().plan().treatment;
  const QPoint from = stage
                          .position_of(planned.pulse + planned.lift_mm * planned.normal +
                                       40 * planned.front.cross(planned.normal))
                          .toPoint();
  QTest::mousePress(&stage, Qt::LeftButton, Qt::NoModifier, from);
  for (int step = 1; step <= 6; ++step) move_to(stage, from + QPoint(6 * step, 4 * step));
  REQUIRE(w.coil().in_hand());
  const QImage in_motion = on_screen(stage);
  forget_what_was_drawn(stage);
  move_to(stage, from + QPoint(36, 24));
  CHECK(in_motion == on_screen(stage));
  QTest::mouseRelease(&stage, Qt::LeftButton, Qt::NoModifier, from + QPoint(36, 24));
}
