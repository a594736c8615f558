#include <QMenu>
#include <catch2/catch.hpp>
#include <map>

#include "tests/viewer/window/opened_window.h"

using namespace scalpmark;
using namespace scalpmark::window;

TEST_CASE("no two entries of a menu share the letter that chooses them") {
  OpenedWindow opened;
  int letters = 0;
  for (const QMenu* menu : opened.window.menuBar()->findChildren<QMenu*>()) {
    std::map<QChar, QString> taken;
    for (const QAction* action : menu->actions()) {
      const QString text = action->text();
      const int at = text.indexOf(QLatin1Char('&'));
      if (at < 0 || at + 1 >= text.size()) continue;
      const QChar letter = text.at(at + 1).toLower();
      INFO(menu->title().toStdString()
           << ": " << text.toStdString() << " and " << taken[letter].toStdString());
      CHECK(taken[letter].isEmpty());
      taken[letter] = text;
      ++letters;
    }
  }
  CHECK(letters > 20);
}
