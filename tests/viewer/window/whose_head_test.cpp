#include <catch2/catch.hpp>

#include "models/meshes/mesh_file.h"
#include "tests/viewer/window/opened_window.h"

using namespace scalpmark;
using namespace scalpmark::window;

namespace {

// A scan 15 % larger than the head whose tapes the case has, opened and placed as a person does.
void place_large_scan(OpenedWindow& opened) {
  MainWindow& w = opened.window;
  const geometry::Head& head = w.session().head().head;
  std::vector<Eigen::Vector3d> corners = head.skin().vertices();
  for (auto& corner : corners) corner *= 1.15;
  geometry::Fiducials at = head.fiducials().at;
  const std::vector<Eigen::Vector3d> points{1.15 * at.nasion, 1.15 * at.inion, 1.15 * at.left_tragus,
                                            1.15 * at.right_tragus};
  const QString file = opened.folder.filePath("large.ply");
  models::write_ply(file.toStdString(), geometry::Surface(corners, head.skin().triangles()));
  w.files().open_path(file);
  opened.settle();
  REQUIRE(w.session().unplaced());
  for (std::size_t i = 0; i < points.size(); ++i) w.session().place(all_fiducials[i], points[i]);
  REQUIRE(w.session().use_placed().isEmpty());
  opened.settle();
  REQUIRE(w.session().case_file().head.kind == models::HeadKind::mesh);
}

}  // namespace

TEST_CASE(
    "a scan that does not fit the tapes of the case is asked about where one sees it, until it is answered") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  CHECK_FALSE(w.tapes_question().is_open());
  place_large_scan(opened);
  CHECK(w.worksheet().current() == Worksheet::landmarks_index);
  REQUIRE(w.tapes_question().isVisible());
  CHECK(w.tapes_question().text().contains("36.2 cm entered, 41."));
  const QString sheet = opened.folder.filePath("sheet.pdf");
  w.output().save_sheet_to(sheet, viewer::Paper::a4);
  CHECK_FALSE(w.output().is_writing());
  CHECK(w.notice_text().contains("whose head"));
  // It does not go away by going elsewhere.
  w.worksheet().go_to(Worksheet::site_index);
  CHECK(w.tapes_question().isVisible());
  w.set_mode(Mode::check);
  CHECK(w.tapes_question().isVisible());
  w.set_mode(Mode::worksheet);

  QTest::mouseClick(w.tapes_question().keep(), Qt::LeftButton);
  CHECK_FALSE(w.tapes_question().isVisible());
  opened.type(w.worksheet().site()->distance()->edit(), "5.5");
  opened.settle();
  CHECK_FALSE(w.tapes_question().isVisible());  // answered for this head and these tapes
  CHECK_FALSE(w.tapes_question().back()->isVisibleTo(&w.tapes_question()));
}

TEST_CASE("the wrong head goes back to the one before, somebody else's tapes go out") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  place_large_scan(opened);
  REQUIRE(w.tapes_question().isVisible());
  QTest::mouseClick(w.tapes_question().back(), Qt::LeftButton);
  opened.settle();
  CHECK(w.session().case_file().head.kind == models::HeadKind::generic);
  CHECK_FALSE(w.tapes_question().isVisible());
  w.undo_list().redo();
  opened.settle();
  REQUIRE(w.tapes_question().isVisible());
  QTest::mouseClick(w.tapes_question().take_out(), Qt::LeftButton);
  opened.settle();
  CHECK_FALSE(w.session().case_file().the_case.tape_mm.nasion_inion_mm);
  CHECK_FALSE(w.tapes_question().isVisible());
}

TEST_CASE(
    "a landmark across the head is asked about in sight, and the view turns to the coil once it holds") {
  models::CaseFile case_file = demo_case();
  case_file.the_case.side = geometry::Side::right;
  OpenedWindow opened(case_file);
  MainWindow& w = opened.window;
  w.resize(960, 620);
  w.worksheet().go_to(Worksheet::site_index);
  SiteStep* step = w.worksheet().site();
  QTest::mouseClick(step->rule()->button(1), Qt::LeftButton);
  opened.settle();
  const auto gaze_before = w.stage().gaze();
  opened.type(step->label(), "F3");
  opened.settle();
  QTest::qWait(50);
  CHECK(w.session().case_file().the_case.treatment.label == "F4");  // nothing holds yet
  REQUIRE(step->problem().contains("patient's left"));
  const auto* sentence = step->findChild<QLabel*>("problem");
  REQUIRE(sentence);
  const auto in_sight = [&](const QWidget* widget) {
    const QRect there(widget->mapTo(&w.worksheet(), QPoint(0, 0)), widget->size());
    return w.worksheet().viewport()->rect().contains(there);
  };
  bool any = false;
  for (const QLabel* label : step->findChildren<QLabel*>("problem"))
    if (label->isVisible() && label->text() == step->problem()) any = any || in_sight(label);
  CHECK(any);
  QTest::keyClick(step->label(), Qt::Key_Return);
  opened.settle();
  CHECK(w.session().case_file().the_case.treatment.label == "F3");
  // Straight down on a coil that is on the left now.
  CHECK(w.stage().gaze().toward_eye.dot(w.session().plan().treatment.normal) > 0.9);
  CHECK(gaze_before.toward_eye.dot(w.session().plan().treatment.normal) < 0.5);
}
