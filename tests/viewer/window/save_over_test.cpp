#include <QDir>
#include <QFile>
#include <catch2/catch.hpp>

#include "models/cases/case_file.h"
#include "models/meshes/mesh_file.h"
#include "tests/viewer/window/opened_window.h"

using namespace scalpmark;
using namespace scalpmark::window;

namespace {

QByteArray bytes_of(const QString& path) {
  QFile file(path);
  REQUIRE(file.open(QIODevice::ReadOnly));
  return file.readAll();
}

void put(const QString& path, const QByteArray& bytes) {
  QFile file(path);
  REQUIRE(file.open(QIODevice::WriteOnly));
  file.write(bytes);
}

std::string label_in(const QString& path) {
  return models::read_case(path.toStdString()).the_case.label;
}

}  // namespace

TEST_CASE("of two windows on one case the second saver is asked, and both versions stay") {
  OpenedWindow first, second;
  const QString file = first.folder.filePath("case.json");
  REQUIRE(first.window.files().save_to(file));
  second.window.files().open_path(file);
  second.settle();
  first.type(first.window.worksheet().save()->label(), "First");
  REQUIRE(first.window.files().save());
  second.type(second.window.worksheet().save()->label(), "Second");

  int asked = 0;
  auto answer = ChangedAnswer::cancel;
  second.window.files().ask_changed = [&](const QString& path) {
    ++asked;
    CHECK(QFileInfo(path) == QFileInfo(file));
    return answer;
  };
  CHECK_FALSE(second.window.files().save());
  CHECK(asked == 1);
  CHECK(label_in(file) == "First");
  CHECK_FALSE(second.window.session().is_saved());

  answer = ChangedAnswer::keep_both;
  CHECK(second.window.files().save());
  CHECK(asked == 2);
  CHECK(label_in(file) == "Second");
  const QStringList all = QDir(first.folder.path()).entryList({"*.json"}, QDir::Files);
  REQUIRE(all.size() == 2);
  const QString other = all[0] == "case.json" ? all[1] : all[0];
  CHECK(label_in(first.folder.filePath(other)) == "First");
  // Its own version is no stranger's.
  second.type(second.window.worksheet().save()->label(), "Third");
  CHECK(second.window.files().save());
  CHECK(asked == 2);
  CHECK(label_in(file) == "Third");
}

TEST_CASE("saving over a file that holds something else asks, and no leaves it as it is") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  const QString file = opened.folder.filePath("notes.json");
  put(file, "{ \"shopping\": [ \"tape\", \"pencil\" ] }\n");
  const QByteArray before = bytes_of(file);
  int asked = 0;
  bool answer = false;
  w.files().ask_replace = [&](const QString&) {
    ++asked;
    return answer;
  };
  CHECK_FALSE((w.files().save_to(file) && bytes_of(file) != before));
  CHECK(asked == 1);
  CHECK(bytes_of(file) == before);
  CHECK(w.session().file() != QFileInfo(file).absoluteFilePath());
  answer = true;
  CHECK(w.files().save_to(file));
  CHECK(asked == 2);
  CHECK(label_in(file) == demo_case().the_case.label);
}

TEST_CASE("no save in the window goes over the scan or the case that it is made from") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  const QString scan = opened.folder.filePath("scan.ply"), file = opened.folder.filePath("case.json");
  models::CaseFile with_scan = w.session().case_file();
  models::write_ply(scan.toStdString(), w.session().head().head.skin());
  const geometry::Fiducials known = w.session().head().head.fiducials().at;
  with_scan.head = {};
  with_scan.head.kind = models::HeadKind::mesh;
  with_scan.head.file = scan.toStdString();
  with_scan.head.unit = models::Unit::millimetre;
  with_scan.head.fiducials = known;
  models::write_case(file.toStdString(), with_scan);
  w.files().open_path(file);
  opened.settle();
  REQUIRE(w.session().case_file().head.kind == models::HeadKind::mesh);
  const QByteArray scan_before = bytes_of(scan), case_before = bytes_of(file);
  w.files().ask_replace = [](const QString&) { return true; };  // whatever is answered

  CHECK_FALSE((w.files().save_to(scan) && bytes_of(scan) != scan_before));
  CHECK(w.notice_text().endsWith("."));
  for (const QString& input : {scan, file}) {
    INFO(input.toStdString());
    w.output().save_sheet_to(input, viewer::Paper::a4);
    CHECK_FALSE(w.output().is_writing());
    CHECK(w.notice_text().contains(QFileInfo(input).fileName()));
    CHECK(w.notice_text().endsWith("."));
  }
  CHECK(bytes_of(scan) == scan_before);
  CHECK(bytes_of(file) == case_before);
}
