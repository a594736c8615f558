#include <QCloseEvent>
#include <QDir>
#include <QDragEnterEvent>
#include <QFileDialog>
#include <QFileInfo>
#include <QMimeData>

#include "models/files/embedded_data.h"
#include "viewer/window/frame/dialogs.h"
#include "viewer/window/frame/main_window.h"

// Cases and heads: how they come in and are kept.

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

void MainWindow::closeEvent(QCloseEvent* event) {
  if (output_) {
    // A sheet that was asked for is not lost; it takes seconds.
    close_when_written_ = true;
    event->ignore();
    return;
  }
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
