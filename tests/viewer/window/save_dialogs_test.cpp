// The dialogs in which a file is chosen, opened from the menu and filled in: what they offer is what
// is written. Pictures of them are left in build/dialogs/ to be looked at.
#include <QAction>
#include <QApplication>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QDir>
#include <QFile>
#include <QFileDialog>
#include <QLineEdit>
#include <QPushButton>
#include <QTimer>
#include <algorithm>
#include <catch2/catch.hpp>

#include "tests/viewer/window/in_german.h"
#include "tests/viewer/window/opened_window.h"

using namespace scalpmark;
using namespace scalpmark::window;

namespace {

struct Offered {
  QString title, name;
  QStringList kinds;
  bool in_sight = false;
};

/// Calls the menu's line with these keys, chooses a kind of file in the dialog that comes, and says where it
/// goes.
Offered save_by(OpenedWindow& opened, const QKeySequence& keys, int kind, const QString& file,
                const QString& picture) {
  Offered offered;
  QTimer::singleShot(300, &opened.window, [&] {
    auto* dialog = qobject_cast<QFileDialog*>(QApplication::activeModalWidget());
    if (!dialog) return;
    offered.title = dialog->windowTitle();
    offered.kinds = dialog->nameFilters();
    auto* typed = dialog->findChild<QLineEdit*>("fileNameEdit");
    auto* kinds = dialog->findChild<QComboBox*>("fileTypeCombo");
    if (typed && kinds) {
      offered.name = typed->text();
      kinds->setFocus();
      QTest::keyClick(kinds, Qt::Key_Home);
      for (int i = 0; i < kind; ++i) QTest::keyClick(kinds, Qt::Key_Down);
      const QFontMetrics letters = kinds->fontMetrics();
      offered.in_sight = opened.window.screen()->geometry().contains(dialog->frameGeometry());
      for (const QString& each : offered.kinds)
        offered.in_sight = offered.in_sight && letters.horizontalAdvance(each) < kinds->width();
      QDir().mkpath(QStringLiteral(SCALPMARK_BINARY_DIR "/dialogs"));
      dialog->grab().save(QStringLiteral(SCALPMARK_BINARY_DIR "/dialogs/%1.png").arg(picture));
      dialog->selectFile(file);
      QTest::mouseClick(dialog->findChild<QDialogButtonBox*>()->button(QDialogButtonBox::Save),
                        Qt::LeftButton);
    }
    if (dialog->isVisible()) dialog->reject();
  });
  // Without a window manager no window is active for sure, so no key would reach the menu.
  for (QAction* action : opened.window.findChildren<QAction*>())
    if (action->shortcut() == keys) action->trigger();
  OpenedWindow::wait_until([&] { return !opened.window.output().is_writing(); });
  return offered;
}

/// The longer side, in points, of a PDF's first page: PDF 32000-1:2008, 14.11.2, MediaBox.
double long_side(const QString& file) {
  QFile pdf(file);
  REQUIRE(pdf.open(QIODevice::ReadOnly));
  const QByteArray all = pdf.readAll();
  const auto box = all.indexOf("/MediaBox [");
  REQUIRE(box >= 0);
  const auto corners = all.mid(box + 11, 40).simplified().split(' ');
  return std::max(corners.value(2).toDouble(), corners.value(3).toDouble());
}

}  // namespace

TEST_CASE("strips of paper are saved on the paper that their dialog was told") {
  OpenedWindow opened;
  const QString a4 = opened.folder.filePath("first"), letter = opened.folder.filePath("second.pdf");
  const QKeySequence keys("Ctrl+Shift+T");
  const Offered offered = save_by(opened, keys, 0, a4, "strips");
  CHECK(offered.title == "Save strips of paper");
  CHECK(offered.name.endsWith("-strips.pdf"));
  CHECK(offered.in_sight);
  REQUIRE(offered.kinds.size() == 2);
  // What was not typed of the ending is added. A4 is 297 mm long (ISO 216), Letter 11 inches (ANSI/ASME
  // Y14.1).
  CHECK(long_side(a4 + ".pdf") == Approx(297 / 25.4 * 72).margin(0.6));
  (void)save_by(opened, keys, 1, letter, "strips-letter");
  CHECK(long_side(letter) == Approx(11 * 72).margin(0.6));
}

TEST_CASE("a head is exported as the kind that its dialog was told, with the ending of that kind") {
  OpenedWindow opened;
  const QKeySequence keys("Ctrl+Shift+E");
  std::vector<qint64> sizes;
  const char* const endings[] = {".glb", ".ply", ".stl", ".stl"};
  for (int kind = 0; kind < 4; ++kind) {
    const QString file = opened.folder.filePath(QStringLiteral("head-%1").arg(kind));
    const Offered offered = save_by(opened, keys, kind, file, QStringLiteral("export-%1").arg(kind));
    CHECK(offered.title == "Export the head");
    CHECK(offered.in_sight);
    REQUIRE(offered.kinds.size() == 4);
    INFO(kind);
    CHECK(offered.kinds[kind].contains(endings[kind]));
    CHECK(QFile::exists(file + endings[kind]));
    sizes.push_back(QFileInfo(file + endings[kind]).size());
  }
  CHECK(sizes[3] < sizes[2]);  // cut flat above the brow
}

TEST_CASE("in German, in a small window, what these dialogs offer is German and in sight") {
  const InGerman german;
  OpenedWindow opened;
  opened.window.resize(960, 620);
  const QString strips = opened.folder.filePath("streifen.pdf"), head = opened.folder.filePath("kopf.glb");
  const Offered paper =
      save_by(opened, QKeySequence("Ctrl+Shift+T"), 0, strips, QStringLiteral("strips-german"));
  CHECK(paper.title == "Papierstreifen speichern");
  CHECK(paper.in_sight);
  CHECK(long_side(strips) == Approx(297 / 25.4 * 72).margin(0.6));
  const Offered kinds =
      save_by(opened, QKeySequence("Ctrl+Shift+E"), 0, head, QStringLiteral("export-german"));
  CHECK(kinds.title == "Kopf exportieren");
  CHECK(kinds.in_sight);
  CHECK(QFile::exists(head));
}
