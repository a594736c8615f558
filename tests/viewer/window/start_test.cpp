#include <catch2/catch.hpp>

#include "tests/viewer/window/opened_window.h"
#include "viewer/sheet/content.h"

using namespace scalpmark;
using namespace scalpmark::window;

namespace {

// The window as the program opens it, without a case.
struct Started {
  explicit Started(const QStringList& recent = {}) {
    Settings settings = Settings::read();
    settings.cautions_seen = true;
    settings.recent = recent;
    settings.write();
    window = std::make_unique<MainWindow>();
    window->files().ask_unsaved = [] { return UnsavedAnswer::discard; };
    window->stage().set_animated(false);
    window->show();
    REQUIRE(QTest::qWaitForWindowExposed(window.get()));
    window->activateWindow();
    window->files().begin({});
  }
  void settle() {
    OpenedWindow::wait_until(
        [this] { return window->session().is_ready() && !window->session().is_working(); });
  }
  std::unique_ptr<MainWindow> window;
};

}  // namespace

TEST_CASE("a first start offers the demo case, a new one and a file, none is begun before one is chosen") {
  Started started;
  MainWindow& w = *started.window;
  REQUIRE(w.start_page().isVisible());
  CHECK_FALSE(w.session().is_ready());
  CHECK_FALSE(w.start_page().recent()->isVisible());
  QTest::keyClick(w.start_page().demo(), Qt::Key_Return);  // by key
  started.settle();
  CHECK_FALSE(w.start_page().isVisible());
  CHECK(models::is_demo(w.session().case_file().the_case));
  // It says so.
  QTest::qWait(50);
  const auto& captions = w.stage().stage().captions();
  CHECK(std::any_of(captions.begin(), captions.end(), [](const viewer::Caption& caption) {
    return caption.text.find("Demo case, not a real person") != std::string::npos;
  }));
  const viewer::SheetContent sheet = viewer::sheet_content(w.session().case_file(), w.session().head(),
                                                           w.session().plan(), "today", nullptr);
  CHECK(sheet.head.find("Demo case") != std::string::npos);
}

TEST_CASE("a new case is no demo and says nothing of one") {
  Started started;
  MainWindow& w = *started.window;
  QTest::mouseClick(w.start_page().fresh(), Qt::LeftButton);
  started.settle();
  CHECK_FALSE(models::is_demo(w.session().case_file().the_case));
  CHECK(w.worksheet().current() == Worksheet::measure_index);
}

TEST_CASE("later starts list the cases used lately, as far as they are still there") {
  QTemporaryDir folder;
  const QString file = folder.filePath("lately.json");
  models::CaseFile case_file = models::default_case();
  case_file.the_case.label = "Used lately";
  models::write_case(file.toStdString(), case_file);
  Started started({folder.filePath("gone.json"), file});
  MainWindow& w = *started.window;
  REQUIRE(w.start_page().recent()->count() == 1);
  QTest::keyClick(w.start_page().recent(), Qt::Key_Return);
  started.settle();
  CHECK(w.session().case_file().the_case.label == "Used lately");
  CHECK_FALSE(w.start_page().isVisible());
}

TEST_CASE("a saved plan is locked: a slip of the hand changes nothing, unlocking it does") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  w.session().set_locks_when_kept(true);
  REQUIRE(w.files().save_to(opened.folder.filePath("kept.json")));
  CHECK(w.session().is_locked());
  w.worksheet().go_to(Worksheet::site_index);
  const std::string before = opened.case_text();
  opened.type(w.worksheet().site()->distance()->edit(), "5.5");
  opened.settle();
  CHECK(opened.case_text() == before);
  CHECK(w.worksheet().site()->distance()->problem().contains("locked"));
  // What the plan does not hang on goes on: the label.
  w.worksheet().go_to(Worksheet::save_index);
  opened.type(w.worksheet().save()->label(), "Chair 2");
  CHECK(w.session().case_file().the_case.label == "Chair 2");
  QTest::mouseClick(w.worksheet().save()->lock(), Qt::LeftButton);
  CHECK_FALSE(w.session().is_locked());
  w.worksheet().go_to(Worksheet::site_index);
  opened.type(w.worksheet().site()->distance()->edit(), "5.5");
  opened.settle();
  CHECK(w.session().case_file().the_case.treatment.distance_mm == Approx(55));
  // Opened again, it is locked again.
  REQUIRE(w.files().save());
  w.files().open_path(opened.folder.filePath("kept.json"));
  opened.settle();
  CHECK(w.session().is_locked());
  w.session().undo();
  CHECK(w.session().case_file().the_case.treatment.distance_mm == Approx(55));
}
