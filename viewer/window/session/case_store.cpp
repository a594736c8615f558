#include "viewer/window/session/case_store.h"

#include <QFileInfo>

#include "viewer/window/jobs/head_job.h"
#include "viewer/words/words.h"

namespace scalpmark::window {

namespace fs = std::filesystem;

namespace {

constexpr int autosave_after_ms =
    1500;  // long enough not to write at every key, short enough not to lose work

// A relative head file means something else from another folder.
models::CaseFile moved_to(models::CaseFile case_file, const fs::path& folder) {
  if (!case_file.head.file.empty()) {
    const fs::path full = fs::absolute(head_path(case_file.head, case_file.folder)).lexically_normal();
    const fs::path relative = full.lexically_relative(fs::absolute(folder).lexically_normal());
    const bool below = !relative.empty() && *relative.begin() != "..";
    case_file.head.file = below ? relative : full;
  }
  case_file.folder = folder;
  return case_file;
}

}  // namespace

CaseStore::CaseStore(const CaseHistory& history, const QString& recovery_folder, QObject* parent)
    : QObject(parent), history_(history), recovery_(recovery_folder) {
  autosave_.setSingleShot(true);
  autosave_.setInterval(autosave_after_ms);
  connect(&autosave_, &QTimer::timeout, this, &CaseStore::keep_copy);
}

void CaseStore::belongs_to(const QString& file) {
  file_ = file;
  if (history_.is_saved())
    forget_copy();
  else
    autosave_.start();
}

models::CaseFile CaseStore::write(const QString& path) {
  const QFileInfo info(path);
  models::CaseFile moved = moved_to(history_.now(), info.absolutePath().toStdString());
  models::write_case(info.absoluteFilePath().toStdString(), moved);
  file_ = info.absoluteFilePath();
  forget_copy();
  return moved;
}

void CaseStore::forget_copy() {
  autosave_.stop();
  recovery_.forget();
}

void CaseStore::keep_copy() {
  if (history_.is_saved()) return;
  try {
    recovery_.keep(history_.now(), file_);
  } catch (const std::exception& error) {
    emit refused(viewer::translated(error));
  }
}

}  // namespace scalpmark::window
