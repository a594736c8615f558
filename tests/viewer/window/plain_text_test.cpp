// What stands in a case or a file's name stays text, whatever signs of HTML are in it.
#include <QFile>
#include <QLabel>
#include <catch2/catch.hpp>

#include "tests/viewer/window/opened_window.h"

using namespace scalpmark;
using namespace scalpmark::window;

namespace {

/// Labels that would make letters of ours fat, or fetch a picture, of what they repeat; `seen` counts those
/// that repeat it at all.
QStringList taken_for_html(const MainWindow& w, int& seen) {
  QStringList wrong;
  for (const auto* label : w.findChildren<QLabel*>()) {
    if (!label->text().contains("<b>seven</b>")) continue;
    ++seen;
    if (label->textFormat() == Qt::RichText ||
        (label->textFormat() == Qt::AutoText && Qt::mightBeRichText(label->text())))
      wrong << label->objectName() + ": " + label->text();
  }
  return wrong;
}

}  // namespace

TEST_CASE("HTML in a label, a file's name or a damaged case is shown as text") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  (void)w.session().change("Label",
                           [](models::CaseFile& file) { file.the_case.label = "<b>seven</b> of nine"; });
  w.set_mode(Mode::explain);
  opened.settle();
  int seen = 0;
  w.explain().show_case(w.session(), true);
  CHECK(taken_for_html(w, seen).isEmpty());
  CHECK(seen > 0);
  w.set_mode(Mode::worksheet);

  // A case with a key that it may not have: the key is repeated.
  seen = 0;
  const QString broken = opened.folder.filePath("broken.json");
  QFile file(broken);
  REQUIRE(file.open(QIODevice::WriteOnly));
  file.write(R"({"format": "scalpmark-case", "version": 2, "<b>seven</b>": 1, "head": {"kind": "generic"}})");
  file.close();
  w.files().open_path(broken);
  opened.settle();
  INFO(w.notice_text().toStdString());
  CHECK(w.notice_text().contains("<b>seven</b>"));
  CHECK(taken_for_html(w, seen).isEmpty());
  CHECK(seen > 0);
}
