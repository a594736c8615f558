#include <QAbstractButton>
#include <QAbstractScrollArea>
#include <QLineEdit>
#include <QMenuBar>
#include <catch2/catch.hpp>

#include "models/meshes/mesh_file.h"
#include "tests/viewer/window/opened_window.h"
#include "viewer/window/fields/small_length_field.h"

using namespace scalpmark;
using namespace scalpmark::window;

namespace {

// Whatever can take the focus must say what it is to those who do not see it.
void check_names(QWidget& of) {
  for (QWidget* each : of.findChildren<QWidget*>()) {
    if (each->focusPolicy() == Qt::NoFocus) continue;
    // Parts of Qt's own widgets speak through the widget they belong to.
    const auto* owner = qobject_cast<QAbstractScrollArea*>(each->parentWidget());
    if (owner || each->objectName().startsWith("qt_") ||
        each->parentWidget()->inherits("QComboBoxPrivateContainer"))
      continue;
    QString name = each->accessibleName();
    if (const auto* button = qobject_cast<QAbstractButton*>(each); button && name.isEmpty())
      name = button->text();
    if (const auto* label = qobject_cast<QLabel*>(each); label && name.isEmpty()) {
      name = label->text();
      if (!label->isVisible()) continue;  // it gets its text when it is shown
    }
    if (const auto* menu = qobject_cast<QMenu*>(each); menu && name.isEmpty()) name = menu->title();
    if (qobject_cast<QMenuBar*>(each)) continue;  // its menus are named
    INFO(each->metaObject()->className() << " " << each->objectName().toStdString() << " in "
                                         << each->parentWidget()->metaObject()->className());
    CHECK_FALSE(name.trimmed().isEmpty());
  }
}

}  // namespace

TEST_CASE("every control that can be reached has a name for those who do not see it") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  for (int i = 0; i <= Worksheet::save_index; ++i)
    w.worksheet().go_to(static_cast<Worksheet::StepIndex>(i), false);
  QTest::qWait(50);
  check_names(w);
  const QString mesh = opened.folder.filePath("scan.ply");
  models::write_ply(mesh.toStdString(), w.session().head().head.skin());
  w.files().open_path(mesh);
  opened.settle();
  check_names(w);
}

TEST_CASE("every field says its unit and its range, and what each button does can be asked for") {
  OpenedWindow opened;
  const auto fields = opened.window.findChildren<NumberField*>();
  CHECK(fields.size() >= 18);
  for (const LengthUnit unit : {LengthUnit::centimetre, LengthUnit::inch}) {
    opened.window.set_unit(unit);
    for (const NumberField* field : fields) {
      INFO(field->edit()->accessibleName().toStdString());
      static const QRegularExpression range(
          QString::fromUtf8("From -?[0-9.]+ to [0-9.]+ (cm|in|whole degrees|mm|\u00b0|%)\\."));
      CHECK(range.match(field->edit()->toolTip()).hasMatch());
      if (qobject_cast<const PlainField*>(field) || qobject_cast<const SmallLengthField*>(field)) {
        const QString unit_of_it = range.match(field->edit()->toolTip()).captured(1);
        CHECK(field->edit()->accessibleName().endsWith("in " + unit_of_it));
        continue;
      }
      const bool length = qobject_cast<const LengthField*>(field) != nullptr;
      CHECK(field->edit()->accessibleName().endsWith(!length                    ? QString::fromUtf8("\u00b0")
                                                     : unit == LengthUnit::inch ? "in in"
                                                                                : "in cm"));
    }
  }
  for (const QLineEdit* edit : opened.window.findChildren<QLineEdit*>()) {
    INFO(edit->accessibleName().toStdString());
    CHECK_FALSE(edit->toolTip().isEmpty());
  }
}

TEST_CASE("Explain shows no worksheet, no numbers and no label, and Escape leads back") {
  OpenedWindow opened;
  MainWindow& w = opened.window;
  QTest::mouseClick(w.mode_button(Mode::explain), Qt::LeftButton);
  CHECK(w.mode() == Mode::explain);
  CHECK_FALSE(w.worksheet().isVisible());
  const QString secret = QString::fromStdString(w.session().case_file().the_case.label);
  for (QLabel* label : w.findChildren<QLabel*>()) {
    if (!label->isVisible()) continue;
    INFO(label->text().toStdString());
    CHECK_FALSE(label->text().contains(QRegularExpression("[0-9]")));
    CHECK_FALSE(label->text().contains(secret));
  }
  // Coil and place are named; no word there is the staff's.
  CHECK(w.stage().stage().labels().size() <= 2);
  for (const auto& label : w.stage().stage().labels()) {
    INFO(label.wish.text);
    CHECK_FALSE(QString::fromStdString(label.wish.text).contains(QRegularExpression("[0-9]")));
    CHECK_FALSE(QString::fromStdString(label.wish.text).contains(secret));
  }
  for (const auto& caption : w.stage().stage().captions()) {
    INFO(caption.text);
    CHECK_FALSE(QString::fromStdString(caption.text).contains(QRegularExpression("[0-9]")));
    CHECK_FALSE(QString::fromStdString(caption.text).contains(secret));
  }
  // The label is shown only where somebody chose so.
  QAction* choose = nullptr;
  for (QAction* action : w.findChildren<QAction*>())
    if (action->text().remove('&') == "Case's label in Explain") choose = action;
  REQUIRE(choose);
  const auto label_shown = [&] {
    for (const QLabel* label : w.findChildren<QLabel*>())
      if (label->isVisible() && label->text() == secret) return true;
    return false;
  };
  CHECK_FALSE(label_shown());
  choose->trigger();
  CHECK(label_shown());
  choose->trigger();
  CHECK_FALSE(label_shown());
  QTest::keyClick(&w.stage(), Qt::Key_Escape);
  CHECK(w.mode() == Mode::worksheet);
  CHECK(w.worksheet().isVisible());
}

TEST_CASE("every mode has its button, whoever opens the window") {
  MainWindow window;
  window.show();
  for (const Mode mode : {Mode::teach, Mode::check, Mode::explain}) {
    REQUIRE(window.mode_button(mode));
    CHECK(window.mode_button(mode)->isVisible());
  }
}
