#include <QDir>
#include <QFile>
#include <QPrinter>
#include <QPrinterInfo>
#include <QProcess>
#include <catch2/catch.hpp>

#include "models/exports/export_file.h"
#include "models/files/own_files.h"
#include "models/meshes/mesh_file.h"
#include "tests/viewer/window/opened_window.h"

using namespace scalpmark;
using namespace scalpmark::window;

namespace {

// What poppler's tools read out of a PDF.
QString said_by(const QString& program, const QStringList& arguments) {
  QProcess tool;
  tool.start(program, arguments);
  REQUIRE(tool.waitForFinished(60'000));
  REQUIRE(tool.exitCode() == 0);
  return QString::fromUtf8(tool.readAllStandardOutput());
}

void wait_until_written(MainWindow& w) {
  OpenedWindow::wait_until([&] { return !w.output().is_writing(); });
}

}  // namespace

TEST_CASE("a sheet is written while the window goes on answering") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  const QString file = opened.folder.filePath("sheet.pdf");
  w.output().save_sheet_to(file, viewer::Paper::letter);
  CHECK(w.output().is_writing());
  CHECK_FALSE(QFile::exists(file));
  int ticks = 0;
  QTimer ticking;
  QObject::connect(&ticking, &QTimer::timeout, [&] { ++ticks; });
  ticking.start(1);
  // An edit meanwhile changes the case, not the sheet that was asked for.
  w.worksheet().go_to(Worksheet::save_index);
  opened.type(w.worksheet().save()->label(), "Later");
  wait_until_written(w);
  CHECK(ticks > 3);
  CHECK(w.notice_text().contains("sheet.pdf"));
  CHECK(w.session().case_file().the_case.label == "Later");
  const QString text = said_by("pdftotext", {"-layout", file, "-"});
  CHECK(text.contains(QString::fromStdString(demo_case().the_case.label)));
  CHECK_FALSE(text.contains("Later"));
  CHECK(said_by("pdfinfo", {file}).contains("612 x 792 pts"));  // Letter, ANSI/ASME Y14.1: 8.5 x 11 inches
}

TEST_CASE("a sheet given up leaves no file, and the next one can be made") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  const QString file = opened.folder.filePath("sheet.pdf");
  w.output().save_sheet_to(file, viewer::Paper::a4);
  QTest::qWait(20);
  QTest::mouseClick(w.work().cancel(), Qt::LeftButton);
  CHECK_FALSE(w.output().is_writing());
  QTest::qWait(500);
  CHECK(QDir(opened.folder.path()).entryList(QDir::Files).isEmpty());
  w.output().save_sheet_to(file, viewer::Paper::a4);
  wait_until_written(w);
  CHECK(said_by("pdfinfo", {file}).contains("(A4)"));
}

TEST_CASE("a picture or a sheet that cannot be written says so in one sentence") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  w.output().save_picture_to(opened.folder.filePath("no such folder/stage.png"));
  wait_until_written(w);
  CHECK(w.notice_text().endsWith("."));
  CHECK(w.notice_text().contains("no such folder"));
  w.output().save_picture_to(opened.folder.filePath("stage.png"));
  wait_until_written(w);
  CHECK(QImage(opened.folder.filePath("stage.png")).size() == w.stage().size());
}

TEST_CASE("printing without a printer is refused in one sentence that names another way") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  if (!QPrinterInfo::availablePrinterNames().isEmpty()) return;  // a dialog would come up
  QTest::keyClick(&w, Qt::Key_P, Qt::ControlModifier);
  CHECK(w.notice_text().startsWith("No printer"));
  CHECK(w.notice_text().contains("PDF"));
  CHECK_FALSE(w.output().is_writing());
}

TEST_CASE("the printed sheet is the one that is saved, on the printer's paper") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  for (const auto paper : {QPageSize::A4, QPageSize::Letter}) {
    const QString printed = opened.folder.filePath("printed.pdf"),
                  saved = opened.folder.filePath("saved.pdf");
    w.output().ask_printer = [&] {
      auto printer = std::make_unique<QPrinter>(QPrinter::HighResolution);
      printer->setOutputFormat(QPrinter::PdfFormat);  // paper that a test can read
      printer->setOutputFileName(printed);
      printer->setPageSize(QPageSize(paper));
      return printer;
    };
    w.output().print_sheet();
    wait_until_written(w);
    w.output().save_sheet_to(saved, paper == QPageSize::A4 ? viewer::Paper::a4 : viewer::Paper::letter);
    wait_until_written(w);
    CHECK(said_by("pdftotext", {"-raw", printed, "-"}).simplified() ==
          said_by("pdftotext", {"-raw", saved, "-"}).simplified());
    const auto pages = [&](const QString& file) {
      return said_by("pdfinfo", {file}).split('\n').filter("Page");
    };
    CHECK(pages(printed) == pages(saved));
  }
}

TEST_CASE("closing the window while a sheet is written waits for the sheet") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  const QString file = opened.folder.filePath("sheet.pdf");
  w.output().save_sheet_to(file, viewer::Paper::a4);
  CHECK_FALSE(w.close());
  OpenedWindow::wait_until([&] { return !w.isVisible(); });
  CHECK(QFile::exists(file));
}

TEST_CASE("the head is exported in the background, in each format, as the command writes it") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  w.output().ask_face = [] {
    FAIL("a drawn head has nobody's face");
    return false;
  };
  for (const char* name : {"head.glb", "head.ply", "head.stl"}) {
    const QString file = opened.folder.filePath(name);
    w.output().save_export_to(file, false);
    CHECK(w.output().is_writing());
    wait_until_written(w);
    CHECK(w.notice_text().contains(name));
    const auto format = models::export_format_of(file.toStdString());
    REQUIRE(format.has_value());
    CHECK(models::own_format_of(file.toStdString()) == models::own_format_of(*format));
  }
  const QString flat = opened.folder.filePath("flat.stl");
  w.output().save_export_to(flat, true);
  wait_until_written(w);
  CHECK(QFileInfo(flat).size() < QFileInfo(opened.folder.filePath("head.stl")).size());
}

TEST_CASE(
    "a scanned person's face is asked about before it leaves, and a print cut above the brow has none") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  const QString scan = opened.folder.filePath("scan.ply"), file = opened.folder.filePath("case.json");
  models::CaseFile with_scan = w.session().case_file();
  models::write_ply(scan.toStdString(), w.session().head().head.skin());
  with_scan.head = {};
  with_scan.head.kind = models::HeadKind::mesh;
  with_scan.head.file = scan.toStdString();
  with_scan.head.unit = models::Unit::millimetre;
  with_scan.head.fiducials = w.session().head().head.fiducials().at;
  models::write_case(file.toStdString(), with_scan);
  w.files().open_path(file);
  opened.settle();
  REQUIRE(w.session().case_file().head.kind == models::HeadKind::mesh);
  int asked = 0;
  bool answer = false;
  w.output().ask_face = [&] {
    ++asked;
    return answer;
  };
  const QString head = opened.folder.filePath("head.glb"), flat = opened.folder.filePath("flat.stl");
  w.output().save_export_to(head, false);
  CHECK(asked == 1);
  CHECK_FALSE(w.output().is_writing());
  CHECK_FALSE(QFile::exists(head));
  answer = true;
  w.output().save_export_to(head, false);
  wait_until_written(w);
  CHECK(asked == 2);
  CHECK(QFile::exists(head));
  w.output().save_export_to(flat, true);
  wait_until_written(w);
  CHECK(asked == 2);
  CHECK(QFile::exists(flat));
  // Never over the scan, whatever is answered.
  w.output().ask_replace = [](const QString&) { return true; };
  const qint64 before = QFileInfo(scan).size();
  w.output().save_export_to(scan, false);
  CHECK_FALSE(w.output().is_writing());
  CHECK(QFileInfo(scan).size() == before);
}
