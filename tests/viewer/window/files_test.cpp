#include <sys/wait.h>
#include <unistd.h>

#include <QFile>
#include <catch2/catch.hpp>
#include <csignal>

#include "geometry/plan/solve.h"
#include "models/cases/case_head.h"
#include "models/heads/load_head.h"
#include "models/meshes/mesh_file.h"
#include "tests/viewer/window/opened_window.h"

using namespace scalpmark;
using namespace scalpmark::window;

TEST_CASE("a case saved and opened again is the same case with the same plan") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  w.worksheet().go_to(Worksheet::search_index);
  opened.type(w.worksheet().search()->anterior()->edit(), "1.5");
  opened.type(w.worksheet().save()->label(), "Class of the morning");
  CHECK_FALSE(w.session().is_saved());
  CHECK(w.isWindowModified());
  const QString file = opened.folder.filePath("kept.json");
  REQUIRE(w.files().save_to(file));
  CHECK(w.session().is_saved());
  CHECK_FALSE(w.isWindowModified());
  const std::string text = opened.case_text();
  const Eigen::Vector3d site = w.session().plan().treatment.pulse;

  opened.type(w.worksheet().search()->anterior()->edit(), "2");
  w.files().open_path(file);
  opened.settle();
  CHECK(opened.case_text() == text);
  CHECK((w.session().plan().treatment.pulse - site).norm() < 1e-9);
  CHECK_FALSE(w.session().history().can_undo());
  CHECK(w.session().file() == QFileInfo(file).absoluteFilePath());
}

TEST_CASE("what cannot be opened or saved is said in one sentence and changes nothing") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  const std::string before = opened.case_text();
  QFile broken(opened.folder.filePath("broken.json"));
  REQUIRE(broken.open(QIODevice::WriteOnly));
  broken.write("{ \"format\": \"scalpmark-case\", ");
  broken.close();
  QFile noise(opened.folder.filePath("noise.nii.gz"));
  REQUIRE(noise.open(QIODevice::WriteOnly));
  noise.write("not a volume at all");
  noise.close();
  for (const QString& path : {broken.fileName(), noise.fileName(), opened.folder.filePath("missing.json"),
                              opened.folder.filePath("missing.ply"), opened.folder.path()}) {
    INFO(path.toStdString());
    w.files().open_path(path);
    opened.settle();
    CHECK((w.notice_text() + w.worksheet().measure()->problem()).endsWith("."));
    CHECK(opened.case_text() == before);
    CHECK(w.session().is_saved());
    w.worksheet().measure()->set_problem({});
  }
  CHECK_FALSE(w.files().save_to(opened.folder.filePath("no such folder/kept.json")));
  CHECK(w.notice_text().endsWith("."));
}

TEST_CASE("leaving with unsaved changes asks, keeping at it keeps everything") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  int asked = 0;
  auto answer = UnsavedAnswer::cancel;
  w.files().ask_unsaved = [&] {
    ++asked;
    return answer;
  };
  opened.type(w.worksheet().save()->label(), "Unsaved");
  CHECK_FALSE(w.close());
  CHECK(asked == 1);
  CHECK(w.isVisible());
  REQUIRE(w.files().save_to(opened.folder.filePath("kept.json")));
  CHECK(w.close());
  CHECK(asked == 1);
}

TEST_CASE("work of a program that was killed is found again, work of one that runs is left alone") {
  QTemporaryDir folder;
  models::CaseFile case_file = models::default_case();
  case_file.the_case.label = "Half done";
  const pid_t child = fork();
  REQUIRE(child >= 0);
  if (child == 0) {
    try {
      auto* recovery = new Recovery(folder.path());
      recovery->keep(case_file, "/somewhere/kept.json");
      ::kill(::getpid(), SIGKILL);
    } catch (...) {
      ::_exit(1);  // this process must not go on as a second run of the tests
    }
  }
  int status = 0;
  REQUIRE(::waitpid(child, &status, 0) == child);
  CHECK(WIFSIGNALED(status));

  Recovery running(folder.path());
  running.keep(models::default_case(), {});
  const Recovery next(folder.path());
  const auto leftovers = next.leftovers();
  REQUIRE(leftovers.size() == 1);
  CHECK(leftovers[0].case_file.the_case.label == "Half done");
  CHECK(leftovers[0].file == "/somewhere/kept.json");
  CHECK((QFile::permissions(leftovers[0].path) & (QFile::ReadGroup | QFile::ReadOther)) ==
        QFile::Permissions());
  Recovery::discard(leftovers[0]);
  CHECK(next.leftovers().empty());
}

TEST_CASE("edits are kept for a crash, and no longer once they are saved") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  const QDir folder(Recovery::usual_folder());
  const auto copies = [&] { return folder.entryList({"*.json"}, QDir::Files).size(); };
  const int before = copies();
  opened.type(w.worksheet().save()->label(), "Keep me");
  REQUIRE(QTest::qWaitFor([&] { return copies() == before + 1; }, 20'000));
  REQUIRE(w.files().save_to(opened.folder.filePath("kept.json")));
  CHECK(copies() == before);
}

TEST_CASE("a case killed in the middle of saving is the old one or the new one, never a broken one") {
  QTemporaryDir folder;
  const std::string file = folder.filePath("kept.json").toStdString();
  models::CaseFile case_file = models::default_case();
  case_file.the_case.label = std::string(150, 'a');
  models::write_case(file, case_file);
  for (int round = 0; round < 12; ++round) {
    const pid_t child = fork();
    REQUIRE(child >= 0);
    if (child == 0) try {
        for (int i = 0;; ++i) {
          case_file.the_case.label = std::string(150, i % 2 ? 'a' : 'b');
          models::write_case(file, case_file);
        }
      } catch (...) {
        ::_exit(1);
      }
    ::usleep(static_cast<useconds_t>(3000 + 1700 * round));
    ::kill(child, SIGKILL);
    int status = 0;
    REQUIRE(::waitpid(child, &status, 0) == child);
    const std::string label = models::read_case(file).the_case.label;
    CHECK((label == std::string(150, 'a') || label == std::string(150, 'b')));
  }
}

TEST_CASE("a scan becomes the head once its four points are clicked on the skin") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  const geometry::Head generic = w.session().head().head;
  const QString file = opened.folder.filePath("scan.ply");
  models::write_ply(file.toStdString(), generic.skin());
  opened.type(w.worksheet().measure()->nasion_inion()->edit(), "28.0");
  opened.settle();
  REQUIRE_FALSE(w.worksheet().measure()->problem().isEmpty());
  w.files().open_path(file);
  opened.settle();
  REQUIRE(w.session().unplaced());
  CHECK(w.worksheet().current() == Worksheet::landmarks_index);
  CHECK(w.stage().is_bare());

  geometry::Fiducials known = generic.fiducials().at;
  for (const Fiducial which : all_fiducials) {
    CHECK(w.worksheet().landmarks()->wanted() == which);
    QTest::qWait(20);
    QTest::mouseClick(&w.stage(), Qt::LeftButton, Qt::NoModifier,
                      w.stage().position_of(point_of(known, which)).toPoint());
    REQUIRE(w.session().unplaced()->placed[static_cast<std::size_t>(which)]);
    // A click hits to a pixel, and the skin may slope there.
    CHECK((*w.session().unplaced()->placed[static_cast<std::size_t>(which)] - point_of(known, which)).norm() <
          6);
  }
  CHECK(w.session().placing_problem().isEmpty());
  QTest::mouseClick(w.worksheet().landmarks()->use_points(), Qt::LeftButton);
  opened.settle();
  CHECK_FALSE(w.session().unplaced());
  CHECK(w.session().case_file().head.kind == models::HeadKind::mesh);
  CHECK(w.session().head().head.vertex().face >= 0);
  CHECK(w.worksheet().measure()->problem().isEmpty());  // what was refused was about another head
  for (const auto step : {Worksheet::measure_index, Worksheet::landmarks_index, Worksheet::search_index,
                          Worksheet::site_index, Worksheet::check_index, Worksheet::save_index}) {
    w.worksheet().go_to(step);
    QTest::qWait(20);
    INFO("step " << static_cast<int>(step) + 1);
    CHECK(w.worksheet().widget()->width() <= w.worksheet().viewport()->width());  // nothing is cut off
  }
  // The same head read again from the case file gives the same plan.
  const QString case_file = opened.folder.filePath("kept.json");
  REQUIRE(w.files().save_to(case_file));
  const auto again = models::read_case(case_file.toStdString());
  CHECK(again.head.file == "scan.ply");
  const auto plan = geometry::solve(models::load_head(again).head, again.the_case);
  CHECK((plan.treatment.pulse - w.session().plan().treatment.pulse).norm() < 0.01);
}

TEST_CASE("four points that make no head are warned of and cannot be used") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  geometry::Fiducials known = w.session().head().head.fiducials().at;
  const QString file = opened.folder.filePath("scan.ply");
  models::write_ply(file.toStdString(), w.session().head().head.skin());
  w.files().open_path(file);
  opened.settle();
  std::swap(known.left_tragus, known.right_tragus);
  for (const Fiducial which : all_fiducials) w.session().place(which, point_of(known, which));
  CHECK(w.session().placing_problem().endsWith("."));
  CHECK(w.worksheet().landmarks()->problem() == w.session().placing_problem());
  CHECK_FALSE(w.worksheet().landmarks()->use_points()->isEnabled());
  // The warning goes with the points.
  w.session().drop_unplaced();
  CHECK(w.worksheet().landmarks()->problem().isEmpty());
}

TEST_CASE("long work can be given up, and the case stays as it was") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  const std::string before = opened.case_text();
  opened.type(w.worksheet().measure()->nasion_inion()->edit(), "37");
  if (w.session().is_working()) w.session().cancel();
  CHECK_FALSE(w.session().is_working());
  QTest::qWait(300);
  CHECK(opened.case_text() == before);
  CHECK(w.session().is_saved());
}
