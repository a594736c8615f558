#include <QApplication>
#include <QClipboard>
#include <QCloseEvent>
#include <QDir>
#include <QDragEnterEvent>
#include <QFileDialog>
#include <QFileInfo>
#include <QMimeData>

#include "models/embedded_data.h"
#include "viewer/sheet/sheet.h"
#include "viewer/window/dialogs.h"
#include "viewer/window/main_window.h"

// Cases, heads, pictures and sheets: how they come in and go out.

namespace scalpmark::window {

namespace {

QString case_filter() {
  return MainWindow::tr("Cases (*.json)");
}
QString head_filter() {
  return MainWindow::tr("Heads (*.obj *.ply *.stl *.gltf *.glb *.nii *.nii.gz);;All files (*)");
}
QString open_filter() {
  return MainWindow::tr(
      "Cases and heads (*.json *.obj *.ply *.stl *.gltf *.glb *.nii *.nii.gz);;All files (*)");
}

}  // namespace

models::CaseFile demo_case() {
  for (const models::EmbeddedFile& file : models::embedded_files())
    if (file.name == "demo/bench-head.json")
      return models::parse_case(std::string(file.text), std::filesystem::current_path(), "the demo case");
  return models::default_case();
}

void MainWindow::begin(const QString& path) {
  if (!settings_.cautions_seen) {
    show_first_note(this);
    settings_.cautions_seen = true;
    settings_.write();
  }
  if (path.isEmpty()) {
    for (const Leftover& leftover : session_.recovery().leftovers()) {
      const bool yes = ask_recover(leftover);
      if (yes) session_.recover(leftover);
      Recovery::discard(leftover);
      if (yes) return;
    }
    session_.start(demo_case());
  } else {
    open_path(path);
    if (!session_.is_ready() && !session_.is_working()) session_.start(demo_case());
  }
}

void MainWindow::open_path(const QString& path) {
  show_notice({});
  const QString problem = session_.open(path);
  if (!problem.isEmpty()) {
    show_notice(problem);
    return;
  }
  if (path.endsWith(QLatin1String(".json"), Qt::CaseInsensitive)) {
    settings_.used(QFileInfo(path).absoluteFilePath());
    settings_.write();
    show_recent();
  }
}

bool MainWindow::may_leave() {
  if (session_.is_saved() || !session_.is_ready()) return true;
  switch (ask_unsaved()) {
    case Answer::save:
      return save();
    case Answer::discard:
      return true;
    case Answer::cancel:
      break;
  }
  return false;
}

void MainWindow::open() {
  if (!may_leave()) return;
  const QString path = QFileDialog::getOpenFileName(this, tr("Open a case or a head"), {}, open_filter());
  if (!path.isEmpty()) open_path(path);
}

void MainWindow::open_head() {
  const QString path = QFileDialog::getOpenFileName(this, tr("Open a head"), {}, head_filter());
  if (!path.isEmpty()) open_path(path);
}

bool MainWindow::save_to(const QString& path) {
  const QString problem = session_.save(path);
  show_notice(problem);
  if (!problem.isEmpty()) return false;
  settings_.used(session_.file());
  settings_.write();
  show_recent();
  return true;
}

bool MainWindow::save() {
  return session_.file().isEmpty() ? save_as() : save_to(session_.file());
}

bool MainWindow::save_as() {
  QString path = QFileDialog::getSaveFileName(this, tr("Save the case"), session_.file(), case_filter());
  if (path.isEmpty()) return false;
  if (!path.endsWith(QLatin1String(".json"), Qt::CaseInsensitive)) path += QStringLiteral(".json");
  return save_to(path);
}

void MainWindow::save_picture() {
  QString path = QFileDialog::getSaveFileName(this, tr("Save a picture"), {}, tr("Pictures (*.png)"));
  if (path.isEmpty()) return;
  if (!path.endsWith(QLatin1String(".png"), Qt::CaseInsensitive)) path += QStringLiteral(".png");
  if (!stage_->picture().save(path, "PNG"))
    show_notice(tr("The picture could not be written to %1; choose another folder.")
                    .arg(QDir::toNativeSeparators(path)));
}

void MainWindow::save_sheet() {
  if (!session_.is_ready()) return;
  const QString a4 = tr("Sheet on A4 (*.pdf)"), letter = tr("Sheet on Letter (*.pdf)");
  QString chosen = a4;
  QString path = QFileDialog::getSaveFileName(this, tr("Save a sheet"), {}, a4 + ";;" + letter, &chosen);
  if (path.isEmpty()) return;
  if (!path.endsWith(QLatin1String(".pdf"), Qt::CaseInsensitive)) path += QStringLiteral(".pdf");
  QApplication::setOverrideCursor(Qt::WaitCursor);
  QString problem;
  try {
    viewer::write_sheet(path.toStdString(), session_.kept(), session_.head(), session_.plan(),
                        chosen == letter ? viewer::Paper::letter : viewer::Paper::a4);
  } catch (const std::exception& error) {
    problem = QString::fromUtf8(error.what());
  }
  QApplication::restoreOverrideCursor();
  show_notice(problem);
}

void MainWindow::copy_picture() {
  QApplication::clipboard()->setImage(stage_->picture());
}

void MainWindow::closeEvent(QCloseEvent* event) {
  if (!may_leave()) {
    event->ignore();
    return;
  }
  session_.recovery().forget();
  session_.cancel();
  event->accept();
}

void MainWindow::dragEnterEvent(QDragEnterEvent* event) {
  const auto urls = event->mimeData()->urls();
  if (urls.size() == 1 && urls.front().isLocalFile()) event->acceptProposedAction();
}

void MainWindow::dropEvent(QDropEvent* event) {
  const auto urls = event->mimeData()->urls();
  if (urls.size() != 1 || !urls.front().isLocalFile()) return;
  const QString path = urls.front().toLocalFile();
  // A head is an edit of the case; another case replaces it.
  if (!path.endsWith(QLatin1String(".json"), Qt::CaseInsensitive) || may_leave()) open_path(path);
}

}  // namespace scalpmark::window
