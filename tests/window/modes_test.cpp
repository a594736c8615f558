#include <QAbstractButton>
#include <QLineEdit>
#include <catch2/catch.hpp>

#include "bench.h"

using namespace scalpmark;
using namespace scalpmark::window;

TEST_CASE("every control that can be reached has a name for those who do not see it") {
  OpenedWindow opened;
  for (QWidget* each : opened.window.findChildren<QWidget*>()) {
    if (each->focusPolicy() == Qt::NoFocus || !each->isEnabled()) continue;
    const auto* button = qobject_cast<QAbstractButton*>(each);
    const bool field = qobject_cast<QLineEdit*>(each) != nullptr;
    if (!button && !field) continue;
    INFO(each->metaObject()->className() << " " << each->objectName().toStdString());
    const QString name = each->accessibleName().isEmpty() && button ? button->text() : each->accessibleName();
    CHECK_FALSE(name.isEmpty());
  }
}

TEST_CASE("Explain shows no worksheet, no numbers and no label, and Escape leads back") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  QTest::mouseClick(w.mode_button(Mode::explain), Qt::LeftButton);
  CHECK(w.mode() == Mode::explain);
  CHECK_FALSE(w.worksheet().isVisible());
  const QString secret = QString::fromStdString(w.session().kept().entered.label);
  for (QLabel* label : w.findChildren<QLabel*>()) {
    if (!label->isVisible()) continue;
    INFO(label->text().toStdString());
    CHECK_FALSE(label->text().contains(QRegularExpression("[0-9]")));
    CHECK_FALSE(label->text().contains(secret));
  }
  CHECK(w.stage().stage().labels().empty());
  QTest::keyClick(&w.stage(), Qt::Key_Escape);
  CHECK(w.mode() == Mode::worksheet);
  CHECK(w.worksheet().isVisible());
}

TEST_CASE("a mode that is not there has no button") {
  MainWindow without_lesson;
  without_lesson.show();
  CHECK_FALSE(without_lesson.mode_button(Mode::teach)->isVisible());
  const OpenedWindow opened;
  CHECK(opened.window.mode_button(Mode::teach)->isVisible());
}
