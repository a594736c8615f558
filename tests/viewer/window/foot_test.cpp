#include "viewer/window/frame/foot.h"

#include <QApplication>
#include <QtTest>
#include <catch2/catch.hpp>

using namespace scalpmark::window;

TEST_CASE("the line under the stage never ends in half of a number: what has no room is left out whole") {
  const QString line =
      "pulse 0.0 mm from the site  |  coil 45\u00b0 to the midline  |  edge mark: drop rule, edge 24.1 mm above it";
  Foot foot;
  foot.show();
  foot.say(line);
  for (const int width : {1600, 900, 700, 500, 420, 900, 1600}) {
    foot.resize(width, 40);
    QTest::qWait(20);
    CAPTURE(width, foot.seen().toStdString());
    CHECK(foot.text() == line);
    const QString end = QStringLiteral("  |  \u2026");
    if (foot.seen() != line) {
      REQUIRE(foot.seen().endsWith(end));
      const QString kept = foot.seen().chopped(end.size());
      CHECK(line.startsWith(kept + "  |  "));
    }
  }
  CHECK(foot.seen() == line);
  foot.resize(500, 40);
  QTest::qWait(20);
  CHECK(foot.seen() != line);
}

TEST_CASE(
    "in the smallest window the line under the stage is whole, and as high with the button as without") {
  const QString line =
      "pulse 10.8 mm from the site  |  coil 45\u00b0 to the midline  |  edge mark: drop rule, edge 24.1 mm above it";
  Foot foot;
  foot.show();
  foot.resize(960, 40);
  foot.say(line);
  QTest::qWait(20);
  CHECK(foot.seen() == line);
  const int height = foot.sizeHint().height();
  foot.show_hand(true, false);
  QTest::qWait(20);
  CHECK(foot.seen() != line);  // the button has its place
  CHECK(foot.back()->width() >= foot.back()->sizeHint().width());
  CHECK(foot.sizeHint().height() == height);
  foot.show_hand(false, false);
  QTest::qWait(20);
  CHECK(foot.seen() == line);
  CHECK(foot.sizeHint().height() == height);
}
