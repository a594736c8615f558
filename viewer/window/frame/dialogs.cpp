#include "viewer/window/frame/dialogs.h"

#include <QCoreApplication>
#include <QDir>
#include <QMessageBox>
#include <QPushButton>

#include "viewer/window/frame/cautions.h"
#include "viewer/words/inch_words.h"

namespace scalpmark::window {

namespace {

// What lupdate finds these texts under.
class Dialogs {
  Q_DECLARE_TR_FUNCTIONS(Dialogs)
};

QString small(double mm) {
  return QString::fromStdString(viewer::whole_length(mm));
}

UnsavedAnswer ask_about_unsaved(QWidget* parent, const QString& title, const QString& sentence,
                                const QString& discarding) {
  QMessageBox box(QMessageBox::Question, title, sentence, QMessageBox::NoButton, parent);
  auto* save = box.addButton(Dialogs::tr("Save"), QMessageBox::AcceptRole);
  auto* discard = box.addButton(discarding, QMessageBox::DestructiveRole);
  box.addButton(Dialogs::tr("Keep working"), QMessageBox::RejectRole);
  box.setDefaultButton(save);
  box.exec();
  return box.clickedButton() == save      ? UnsavedAnswer::save
         : box.clickedButton() == discard ? UnsavedAnswer::discard
                                          : UnsavedAnswer::cancel;
}

}  // namespace

UnsavedAnswer ask_about_unsaved(QWidget* parent) {
  return ask_about_unsaved(parent, Dialogs::tr("Unsaved changes"),
                           Dialogs::tr("The case has changes that are not saved."),
                           Dialogs::tr("Discard the changes"));
}

UnsavedAnswer ask_about_unsaved_result(QWidget* parent) {
  return ask_about_unsaved(parent, Dialogs::tr("Unsaved result"),
                           Dialogs::tr("What was done in this exercise is not saved."),
                           Dialogs::tr("Discard the result"));
}

ChangedAnswer ask_about_changed(QWidget* parent, const QString& file) {
  QMessageBox box(
      QMessageBox::Question, Dialogs::tr("Changed on disk"),
      Dialogs::tr("%1 was changed by somebody else, or in another window, since it was read here. Both "
                  "versions can stay.")
          .arg(QDir::toNativeSeparators(file)),
      QMessageBox::NoButton, parent);
  box.setTextFormat(Qt::PlainText);
  auto* other = box.addButton(Dialogs::tr("Save mine under another name"), QMessageBox::AcceptRole);
  auto* both =
      box.addButton(Dialogs::tr("Save mine here, put the other beside it"), QMessageBox::DestructiveRole);
  box.addButton(Dialogs::tr("Keep working"), QMessageBox::RejectRole);
  box.setDefaultButton(other);
  box.exec();
  return box.clickedButton() == other  ? ChangedAnswer::other_name
         : box.clickedButton() == both ? ChangedAnswer::keep_both
                                       : ChangedAnswer::cancel;
}

bool ask_about_replacing(QWidget* parent, const QString& file) {
  QMessageBox box(QMessageBox::Question, Dialogs::tr("Replace a file"),
                  Dialogs::tr("%1 is there already and holds something else. Replace it?")
                      .arg(QDir::toNativeSeparators(file)),
                  QMessageBox::NoButton, parent);
  box.setTextFormat(Qt::PlainText);
  auto* replace = box.addButton(Dialogs::tr("Replace it"), QMessageBox::DestructiveRole);
  auto* keep = box.addButton(Dialogs::tr("Keep it"), QMessageBox::RejectRole);
  box.setDefaultButton(keep);
  box.exec();
  return box.clickedButton() == replace;
}

bool ask_about_face_in_export(QWidget* parent) {
  QMessageBox box(
      QMessageBox::Question, Dialogs::tr("A person's face"),
      Dialogs::tr(
          "This head is a scan, and the file will show the person's face to whoever gets it. A head for a "
          "3D printer that is cut flat above the brow has none. Write the file with the face?"),
      QMessageBox::NoButton, parent);
  auto* write = box.addButton(Dialogs::tr("Write it with the face"), QMessageBox::AcceptRole);
  auto* leave = box.addButton(Dialogs::tr("Do not write it"), QMessageBox::RejectRole);
  box.setDefaultButton(leave);
  box.setEscapeButton(leave);
  box.exec();
  return box.clickedButton() == write;
}

bool ask_about_leftover(QWidget* parent, const Leftover& leftover) {
  QMessageBox box(
      QMessageBox::Question, Dialogs::tr("Unsaved work found"),
      Dialogs::tr(
          "The program ended unexpectedly on %1 and kept this case: \u201c%2\u201d. Continue with it?")
          .arg(leftover.written, QString::fromStdString(leftover.case_file.the_case.label)),
      QMessageBox::NoButton, parent);
  box.setTextFormat(Qt::PlainText);
  auto* yes = box.addButton(Dialogs::tr("Continue with it"), QMessageBox::AcceptRole);
  box.addButton(Dialogs::tr("Discard it"), QMessageBox::DestructiveRole);
  box.setDefaultButton(yes);
  box.exec();
  return box.clickedButton() == yes;
}

void show_first_note(QWidget* parent) {
  QMessageBox box(QMessageBox::Information, Dialogs::tr("Before you start"), cautions_text(),
                  QMessageBox::NoButton, parent);
  box.setTextFormat(Qt::RichText);
  box.addButton(Dialogs::tr("I have read this"), QMessageBox::AcceptRole);
  box.exec();
}

void show_about(QWidget* parent) {
  QMessageBox box(
      QMessageBox::NoIcon, Dialogs::tr("About Scalpmark"),
      Dialogs::tr("<h3>Scalpmark %1</h3>").arg(QStringLiteral(SCALPMARK_VERSION)) + cautions_text() +
          Dialogs::tr("<p>Built with Qt, VTK, Eigen, Assimp, OpenMesh and nlohmann-json, each under its own "
                      "licence; on Debian see /usr/share/doc.</p>"),
      QMessageBox::Close, parent);
  box.setTextFormat(Qt::RichText);
  box.exec();
}

void show_keys(QWidget* parent) {
  const std::pair<QString, QString> rows[]{
      {Dialogs::tr("1 to 6 on the stage, Alt+1 to Alt+6 anywhere"),
       Dialogs::tr("front, left, right, back, above, straight down on the coil")},
      {Dialogs::tr("Drag the coil"), Dialogs::tr("moves it over the skin")},
      {Dialogs::tr("Left, Right; Ctrl and wheel"),
       Dialogs::tr("turn the coil by 1\u00b0 (with Shift 5\u00b0)")},
      {Dialogs::tr("Ctrl and arrows"),
       Dialogs::tr("move the coil by %1 (with Shift %2)").arg(small(1), small(5))},
      {Dialogs::tr("Click a spot of the grid"), Dialogs::tr("lays the coil on it")},
      {Dialogs::tr("Enter; Ctrl and arrows, placing points"),
       Dialogs::tr("sets the point in the middle of the picture; moves it by %1").arg(small(1))},
      {Dialogs::tr("Esc"), Dialogs::tr("puts the coil back, takes an entry back, leaves Explain")},
      {Dialogs::tr("Drag beside the coil; Alt and arrows"), Dialogs::tr("turn the head")},
      {Dialogs::tr("Right drag; Shift and drag"), Dialogs::tr("shift the picture")},
      {Dialogs::tr("Wheel; + and -"), Dialogs::tr("zoom")},
      {Dialogs::tr("Space; Page Down, Page Up in Teach"),
       Dialogs::tr("play or stop the lesson; next step, step before")},
      {Dialogs::tr("F, T, P, L, X, C in Practise"),
       Dialogs::tr("take the finger, the tape, the pencil for a point, a line or a cross, the coil")},
      {Dialogs::tr("Ctrl and arrows; Space in Practise"),
       Dialogs::tr("move the hand by 1 mm (with Shift 5 mm); set the tool down there, and lift it")},
      {Dialogs::tr("H, O, Delete in Practise"),
       Dialogs::tr("hold the tape where its end is, close it around the head, take tape or coil off")},
      {Dialogs::tr("Up, Down in a field"), Dialogs::tr("a little more, a little less")},
      {Dialogs::tr("Ctrl and a step's heading"), Dialogs::tr("opens it and leaves the others open")},
      {Dialogs::tr("Ctrl+T, Ctrl+H, Ctrl+B"),
       Dialogs::tr("lay the coil on the treatment site, the hotspot, the search start")},
      {Dialogs::tr("Ctrl+G"), Dialogs::tr("shows the gap under the coil, or leaves it out")},
      {Dialogs::tr("Ctrl+I"), Dialogs::tr("shows the induced field in a round model head, or leaves it out")},
      {Dialogs::tr("Ctrl+Shift+B"), Dialogs::tr("looks through the skin at the template's brain, and back")},
      {Dialogs::tr("Ctrl+Alt+A, Ctrl+Alt+B"),
       Dialogs::tr("chooses one of several places that fit a mark's tapes")},
      {Dialogs::tr("0, 1, 2, 3 in Pulses"),
       Dialogs::tr("note the answer to a pulse: none, thumb, index finger, other")},
      {Dialogs::tr("Up, Down; Left, Right in Pulses"),
       Dialogs::tr("output by a step (with Shift a fine one); previous spot, next spot")},
      {Dialogs::tr("Backspace in Pulses"), Dialogs::tr("takes the last pulse back")},
      {Dialogs::tr("Ctrl+E, Ctrl+Shift+P, Ctrl+Shift+C"),
       Dialogs::tr("save a sheet, save a picture, copy the picture")},
      {Dialogs::tr("Ctrl+Shift+W, Ctrl+Shift+E, Ctrl+Shift+T"),
       Dialogs::tr("save a page for a browser, export the head, save strips of paper")},
      {Dialogs::tr("F11"), Dialogs::tr("full screen, and back")},
      {Dialogs::tr("Ctrl+Z, Ctrl+Shift+Z"), Dialogs::tr("undo, redo")}};
  QString text = QStringLiteral("<table cellpadding=4>");
  for (const auto& [keys, what] : rows)
    text += QStringLiteral("<tr><td><b>%1</b></td><td>%2</td></tr>").arg(keys, what);
  QMessageBox box(QMessageBox::NoIcon, Dialogs::tr("Keys"), text + QStringLiteral("</table>"),
                  QMessageBox::Close, parent);
  box.setTextFormat(Qt::RichText);
  box.exec();
}

}  // namespace scalpmark::window
