#include "viewer/window/dialogs.h"

#include <QCoreApplication>
#include <QMessageBox>
#include <QPushButton>

#include "viewer/window/cautions.h"

namespace scalpmark::window {

namespace {

QString tr(const char* text) {
  return QCoreApplication::translate("Dialogs", text);
}

}  // namespace

UnsavedAnswer ask_about_unsaved(QWidget* parent) {
  QMessageBox box(QMessageBox::Question, tr("Unsaved changes"),
                  tr("The case has changes that are not saved."), QMessageBox::NoButton, parent);
  auto* save = box.addButton(tr("Save"), QMessageBox::AcceptRole);
  auto* discard = box.addButton(tr("Discard the changes"), QMessageBox::DestructiveRole);
  box.addButton(tr("Keep working"), QMessageBox::RejectRole);
  box.setDefaultButton(save);
  box.exec();
  return box.clickedButton() == save      ? UnsavedAnswer::save
         : box.clickedButton() == discard ? UnsavedAnswer::discard
                                          : UnsavedAnswer::cancel;
}

bool ask_about_leftover(QWidget* parent, const Leftover& leftover) {
  QMessageBox box(
      QMessageBox::Question, tr("Unsaved work found"),
      tr("The program ended unexpectedly on %1 and kept this case: \u201c%2\u201d. Go on with it?")
          .arg(leftover.written, QString::fromStdString(leftover.kept.entered.label)),
      QMessageBox::NoButton, parent);
  auto* yes = box.addButton(tr("Go on with it"), QMessageBox::AcceptRole);
  box.addButton(tr("Throw it away"), QMessageBox::DestructiveRole);
  box.setDefaultButton(yes);
  box.exec();
  return box.clickedButton() == yes;
}

void show_first_note(QWidget* parent) {
  QMessageBox box(QMessageBox::Information, tr("Before you start"), cautions_text(), QMessageBox::NoButton,
                  parent);
  box.setTextFormat(Qt::RichText);
  box.addButton(tr("I have read this"), QMessageBox::AcceptRole);
  box.exec();
}

void show_about(QWidget* parent) {
  QMessageBox box(
      QMessageBox::NoIcon, tr("About Scalpmark"),
      tr("<h3>Scalpmark %1</h3>").arg(QStringLiteral(SCALPMARK_VERSION)) + cautions_text() +
          tr("<p>Built with Qt, VTK, Eigen, Assimp and nlohmann-json, each under its own licence; on "
             "Debian see /usr/share/doc.</p>"),
      QMessageBox::Close, parent);
  box.setTextFormat(Qt::RichText);
  box.exec();
}

void show_keys(QWidget* parent) {
  const std::pair<QString, QString> rows[]{
      {tr("1 to 6 on the stage, Alt+1 to Alt+6 anywhere"),
       tr("front, left, right, back, above, square on the coil")},
      {tr("Drag the coil"), tr("moves it over the skin")},
      {tr("Left, Right; Ctrl and wheel"), tr("turn the coil by 1\u00b0 (with Shift 5\u00b0)")},
      {tr("Ctrl and arrows"), tr("move the coil by 1 mm (with Shift 5 mm)")},
      {tr("Click a node"), tr("lays the coil on it")},
      {tr("Esc"), tr("puts the coil back, takes an entry back, leaves Explain")},
      {tr("Drag beside the coil; Alt and arrows"), tr("turn the head")},
      {tr("Right drag; Shift and drag"), tr("shift the picture")},
      {tr("Wheel; + and -"), tr("zoom")},
      {tr("Up, Down in a field"), tr("a little more, a little less")},
      {tr("Ctrl and a step's heading"), tr("opens it and leaves the others open")},
      {tr("Ctrl+T, Ctrl+H, Ctrl+B"), tr("lay the coil on the treatment site, the hotspot, the search start")},
      {tr("Ctrl+Z, Ctrl+Shift+Z"), tr("undo, redo")}};
  QString text = QStringLiteral("<table cellpadding=4>");
  for (const auto& [keys, what] : rows)
    text += QStringLiteral("<tr><td><b>%1</b></td><td>%2</td></tr>").arg(keys, what);
  QMessageBox box(QMessageBox::NoIcon, tr("Keys"), text + QStringLiteral("</table>"), QMessageBox::Close,
                  parent);
  box.setTextFormat(Qt::RichText);
  box.exec();
}

}  // namespace scalpmark::window
