// A page for a browser, saved from the window.
#include <QFile>
#include <catch2/catch.hpp>

#include "tests/viewer/window/opened_window.h"

using namespace scalpmark;
using namespace scalpmark::window;
using viewer::Face;
using viewer::PageHead;

TEST_CASE("a page is saved in the background, for whom it was asked") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  const QString file = opened.folder.filePath("page.html");
  for (const Face face : {Face::patient, Face::technician}) {
    w.output().save_page_to(file, {face, PageHead::generic});
    INFO(w.notice_text().toStdString());  // without its parts: what to run
    REQUIRE(w.output().is_writing());
    OpenedWindow::wait_until([&] { return !w.output().is_writing(); });
    CHECK(w.notice_text().contains("page.html"));
    QFile page(file);
    REQUIRE(page.open(QIODevice::ReadOnly));
    const QByteArray html = page.readAll();
    CHECK(html.contains(face == Face::patient ? "<body class=\"patient\">" : "<body class=\"technician\">"));
    const QByteArray label = QByteArray::fromStdString(demo_case().the_case.label);
    CHECK(html.contains(label) == (face == Face::technician));
  }
}

TEST_CASE(
    "Explain proposes a page for a patient, the Save step one for a technician, and no answer makes none") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  std::vector<Face> asked;
  w.output().ask_page = [&](Face face, bool shows_a_person) {
    asked.push_back(face);
    CHECK_FALSE(shows_a_person);  // the demo's head is a drawing
    return std::optional<PageChoice>();
  };
  emit w.worksheet().save()->page_wanted();
  emit w.explain().page_wanted();
  CHECK(asked == std::vector{Face::technician, Face::patient});
  CHECK_FALSE(w.output().is_writing());
}
