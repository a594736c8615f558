#include <catch2/catch.hpp>

#include "models/meshes/mesh_file.h"
#include "tests/viewer/window/opened_window.h"

using namespace scalpmark;
using namespace scalpmark::window;

namespace {

// The generic head as a scan without any points.
geometry::Fiducials open_scan(OpenedWindow& opened) {
  MainWindow& w = opened.window;
  geometry::Fiducials known = w.session().head().head.fiducials().at;
  const QString file = opened.folder.filePath("scan.ply");
  models::write_ply(file.toStdString(), w.session().head().head.skin());
  w.files().open_path(file);
  opened.settle();
  REQUIRE(w.session().unplaced());
  QTest::qWait(50);
  return known;
}

void hover(StageView& stage, const QPoint& at) {
  QMouseEvent move(QEvent::MouseMove, at, stage.mapToGlobal(at), Qt::NoButton, Qt::NoButton, Qt::NoModifier);
  QApplication::sendEvent(&stage, &move);
}

}  // namespace

TEST_CASE("the loupe magnifies what is under the pointer, and a placed point while it is dragged") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  StageView& stage = w.stage();
  const geometry::Fiducials known = open_scan(opened);
  CHECK_FALSE(stage.loupe().is_shown());
  const QPoint nasion = stage.position_of(known.nasion).toPoint();
  hover(stage, nasion);
  REQUIRE(stage.loupe().is_shown());
  CHECK((*stage.loupe().at() - known.nasion).norm() < 6);  // a pixel, on a slope
  // More than twice the size of the picture itself, seen from the same side.
  const double stage_mm = stage.bare().sight().mm_per_px * stage.height() * stage.loupe().place().height();
  CHECK(Loupe::across_mm < 0.5 * stage_mm);
  const QImage with = stage.picture();
  const QRectF share = stage.loupe().place();
  const QRect box(
      static_cast<int>(share.left() * with.width()), static_cast<int>(share.top() * with.height()),
      static_cast<int>(share.width() * with.width()), static_cast<int>(share.height() * with.height()));
  // Beside the head there is nothing to magnify, and the picture's corner is ground again.
  hover(stage, QPoint(3, 3));
  CHECK_FALSE(stage.loupe().is_shown());
  CHECK(with.copy(box) != stage.picture().copy(box));

  QTest::mouseClick(&stage, Qt::LeftButton, Qt::NoModifier, nasion);
  QTest::qWait(50);
  w.worksheet().landmarks()->want(Fiducial::nasion);
  REQUIRE(stage.loupe().is_shown());  // rests on the point that is there
  const QPoint from = stage.position_of(*w.session().unplaced()->placed[0]).toPoint();
  QTest::mousePress(&stage, Qt::LeftButton, Qt::NoModifier, from);
  for (int i = 1; i <= 8; ++i) {
    const QPoint at = from + QPoint(3 * i, 2 * i);
    QMouseEvent move(QEvent::MouseMove, at, stage.mapToGlobal(at), Qt::NoButton, Qt::LeftButton,
                     Qt::NoModifier);
    QApplication::sendEvent(&stage, &move);
    CHECK((*stage.loupe().at() - *w.session().unplaced()->placed[0]).norm() < 1e-9);
  }
  QTest::mouseRelease(&stage, Qt::LeftButton, Qt::NoModifier, from + QPoint(24, 16));
  CHECK((stage.position_of(*w.session().unplaced()->placed[0]) - (from + QPoint(24, 16))).manhattanLength() <
        3);
  w.session().drop_unplaced();
  CHECK_FALSE(stage.loupe().is_shown());
}

TEST_CASE("the camera leads from point to point, close to where the next one must be") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  StageView& stage = w.stage();
  const geometry::Fiducials known_at = open_scan(opened);
  geometry::Fiducials known = known_at;
  const geometry::HeadAxes axes = w.session().head().head.axes();
  const double whole = stage.bare().sight().mm_per_px;
  for (const Fiducial which : all_fiducials) {
    CHECK(w.worksheet().landmarks()->wanted() == which);
    const Eigen::Vector3d toward = which == Fiducial::nasion        ? axes.front
                                   : which == Fiducial::inion       ? Eigen::Vector3d(-axes.front)
                                   : which == Fiducial::left_tragus ? Eigen::Vector3d(-axes.right)
                                                                    : axes.right;
    // The file's axes are not quite the head's: nasion and inion are not at one height.
    CHECK(stage.gaze().toward_eye.dot(toward) > 0.9);
    if (which != Fiducial::nasion) CHECK(stage.bare().sight().mm_per_px < 0.8 * whole);
    const QPoint at = stage.position_of(point_of(known, which)).toPoint();
    CHECK(stage.rect().contains(at));
    QTest::mouseClick(&stage, Qt::LeftButton, Qt::NoModifier, at);
    QTest::qWait(20);
  }
  CHECK(w.session().unplaced()->complete());
  CHECK(w.session().placing_problem().isEmpty());
}

TEST_CASE("the four points are placed and moved by keys alone") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  StageView& stage = w.stage();
  (void)open_scan(opened);
  stage.setFocus();
  QTest::keyClick(&stage, Qt::Key_Return);
  REQUIRE(w.session().unplaced()->placed[0]);
  w.worksheet().landmarks()->want(Fiducial::nasion);
  const Eigen::Vector3d before = *w.session().unplaced()->placed[0];
  QTest::keyClick(&stage, Qt::Key_Up, Qt::ControlModifier | Qt::ShiftModifier);
  const Eigen::Vector3d moved = *w.session().unplaced()->placed[0] - before;
  CHECK(moved.dot(stage.gaze().up) == Approx(5).margin(0.2));
  QTest::keyClick(&stage, Qt::Key_Left, Qt::ControlModifier);
  const Eigen::Vector3d right = stage.gaze().up.cross(stage.gaze().toward_eye);
  CHECK((*w.session().unplaced()->placed[0] - before).dot(right) == Approx(-1).margin(0.2));
}

TEST_CASE("the window guesses the four points, and takes none that nobody has confirmed") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  geometry::Fiducials known = open_scan(opened);
  LandmarksStep* step = w.worksheet().landmarks();
  QTest::mouseClick(step->guess(), Qt::LeftButton);
  OpenedWindow::wait_until([&] { return w.session().unplaced()->placed[3].has_value(); });
  for (const Fiducial which : all_fiducials) {
    // On the head it was fitted from, the guess is as good as the fit (a centimetre is asked of it on
    // others).
    CHECK((*w.session().unplaced()->at(which) - point_of(known, which)).norm() < 5);
    CHECK(w.session().unplaced()->is_guess(which));
  }
  CHECK_FALSE(w.session().unplaced()->complete());
  CHECK_FALSE(w.session().use_placed().isEmpty());
  for (const Fiducial which : all_fiducials) {
    CHECK(step->wanted() == which);
    REQUIRE(step->confirm()->isVisible());
    QTest::mouseClick(step->confirm(), Qt::LeftButton);
  }
  CHECK(w.session().unplaced()->complete());
  CHECK_FALSE(step->confirm()->isVisible());
}
