// Pages for a browser and strips of paper, saved from the window.
#include <QDialog>
#include <QDir>
#include <QFile>
#include <QGroupBox>
#include <QProcess>
#include <QTimer>
#include <catch2/catch.hpp>

#include "models/files/own_files.h"
#include "models/meshes/mesh_file.h"
#include "tests/viewer/window/in_german.h"
#include "tests/viewer/window/opened_window.h"
#include "viewer/window/frame/page_question.h"

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

namespace {

/// What stands in the question while it is open; the picture of it is left in build/dialogs/ to be looked at.
struct Asked {
  QStringList texts;
  QString cut_off;  ///< what does not fit
  QRect place;
  std::optional<PageChoice> answer;
};

/// Opens the question over a window, types `keys` into it, and says what it was.
Asked ask(MainWindow& w, Face face, bool person, const std::vector<Qt::Key>& keys, const QString& name) {
  Asked asked;
  QTimer::singleShot(100, &w, [&] {
    auto* dialog = qobject_cast<QDialog*>(QApplication::activeModalWidget());
    if (!dialog) return;
    QDir().mkpath(QStringLiteral(SCALPMARK_BINARY_DIR "/dialogs"));
    dialog->grab().save(QStringLiteral(SCALPMARK_BINARY_DIR "/dialogs/%1.png").arg(name));
    asked.place = dialog->frameGeometry();
    for (const auto* box : dialog->findChildren<QGroupBox*>()) {
      asked.texts << box->title();
      if (box->fontMetrics().horizontalAdvance(box->title()) > box->width()) asked.cut_off += box->title();
    }
    for (const auto* button : dialog->findChildren<QAbstractButton*>()) {
      asked.texts << button->text();
      if (button->width() < button->sizeHint().width() || button->height() < button->sizeHint().height())
        asked.cut_off += button->text();
    }
    for (const Qt::Key key : keys) {
      QWidget* on =
          dialog->focusWidget();  // the dialog's own: without a window manager no window is active for sure
      QTest::keyClick(on ? on : dialog, key);
    }
    if (dialog->isVisible()) dialog->reject();
  });
  asked.answer = ask_about_page(&w, face, person);
  return asked;
}

models::CaseFile scanned(OpenedWindow& opened) {
  models::CaseFile with_scan = opened.window.session().case_file();
  const QString scan = opened.folder.filePath("scan.ply");
  models::write_ply(scan.toStdString(), opened.window.session().head().head.skin());
  with_scan.head = {};
  with_scan.head.kind = models::HeadKind::mesh;
  with_scan.head.file = scan.toStdString();
  with_scan.head.unit = models::Unit::millimetre;
  with_scan.head.fiducials = opened.window.session().head().head.fiducials().at;
  return with_scan;
}

}  // namespace

TEST_CASE("whom a page is for is answered by keys alone, and all of the question can be read") {
  for (const bool german : {false, true}) {
    const InGerman speaks(german);
    OpenedWindow opened;
    MainWindow& w = opened.window;
    for (const QSize size : {QSize(960, 620), QSize(1280, 800), QSize(1920, 1080)})
      for (const bool person : {false, true}) {
        w.resize(size);
        QTest::qWait(20);
        const QString name =
            QStringLiteral("page-%1-%2-%3")
                .arg(german ? "german" : "english", person ? "scan" : "drawn", QString::number(size.width()));
        const Asked asked = ask(w, Face::technician, person, {Qt::Key_Return}, name);
        INFO(name.toStdString() << ", cut off: " << asked.cut_off.toStdString());
        CHECK(asked.cut_off.isEmpty());
        CHECK(asked.place.width() <= size.width());
        CHECK(asked.place.height() <= size.height());
        CHECK(asked.texts.size() == (person ? 10 : 6));
        REQUIRE(asked.answer.has_value());
        CHECK(asked.answer->face == Face::technician);
        CHECK(asked.answer->head == PageHead::generic);  // nobody's face unless that is asked for
      }
    // Arrows choose, Tab goes on to which head, Escape makes no page.
    const Asked other =
        ask(w, Face::patient, true, {Qt::Key_Down, Qt::Key_Down, Qt::Key_Tab, Qt::Key_Down, Qt::Key_Return},
            "page-keys");
    REQUIRE(other.answer.has_value());
    CHECK(other.answer->face == Face::class_room);
    CHECK(other.answer->head == PageHead::scalp);
    CHECK_FALSE(ask(w, Face::patient, true, {Qt::Key_Escape}, "page-escape").answer.has_value());
  }
}

TEST_CASE("of a scan a page is asked which head it is to have, from menu, Save step and Explain") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  const QString file = opened.folder.filePath("case.json");
  models::write_case(file.toStdString(), scanned(opened));
  w.files().open_path(file);
  opened.settle();
  REQUIRE(w.session().case_file().head.kind == models::HeadKind::mesh);
  std::vector<std::pair<Face, bool>> asked;
  w.output().ask_page = [&](Face face, bool shows_a_person) {
    asked.emplace_back(face, shows_a_person);
    return std::optional<PageChoice>();
  };
  QTest::keyClick(&w, Qt::Key_W, Qt::ControlModifier | Qt::ShiftModifier);
  w.worksheet().go_to(Worksheet::save_index);
  for (auto* button : w.worksheet().save()->findChildren<QPushButton*>())
    if (button->text().startsWith("Page for a browser")) button->click();
  w.set_mode(Mode::explain);
  for (auto* button : w.explain().findChildren<QPushButton*>())
    if (button->text().startsWith("Page")) button->click();
  CHECK(asked == std::vector<std::pair<Face, bool>>{
                     {Face::technician, true}, {Face::technician, true}, {Face::patient, true}});
  // The heads that may be chosen are those the pages then have.
  const QString html = opened.folder.filePath("page.html");
  const std::pair<PageHead, const char*> heads[]{{PageHead::generic, "drawing of a head"},
                                                 {PageHead::scalp, "scalp above brow and ears"},
                                                 {PageHead::own, "shows that person"}};
  for (const auto& [head, said] : heads) {
    w.output().save_page_to(html, {Face::technician, head});
    REQUIRE(w.output().is_writing());
    OpenedWindow::wait_until([&] { return !w.output().is_writing(); });
    QFile page(html);
    REQUIRE(page.open(QIODevice::ReadOnly));
    const QString body = QString::fromUtf8(page.readAll()).section("<header>", 1).section("</header>", 0, 0);
    INFO(body.toStdString());
    CHECK(body.contains(said));
  }
}

TEST_CASE("strips of paper are saved from the window, by key, as the command writes them") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  const QString file = opened.folder.filePath("strips.pdf");
  w.output().save_strips_to(file, viewer::Paper::letter);
  REQUIRE(w.output().is_writing());
  OpenedWindow::wait_until([&] { return !w.output().is_writing(); });
  CHECK(w.notice_text().contains("strips.pdf"));
  CHECK(models::own_format_of(file.toStdString()) == "scalpmark-pdf");
  const QString case_file = opened.folder.filePath("case.json"),
                by_command = opened.folder.filePath("command.pdf");
  models::write_case(case_file.toStdString(), w.session().case_file());
  QProcess command;
  command.start(QStringLiteral(SCALPMARK_BINARY_DIR "/scalpmark"),
                {"strips", case_file, "--paper", "letter", "--out", by_command});
  REQUIRE(command.waitForFinished(60000));
  const auto text_of = [](const QString& pdf) {
    QProcess reader;
    reader.start("pdftotext", {"-layout", pdf, "-"});
    reader.waitForFinished(60000);
    return reader.readAllStandardOutput();
  };
  CHECK(text_of(file).contains("Nasion to inion"));
  CHECK(text_of(file) == text_of(by_command));
}
