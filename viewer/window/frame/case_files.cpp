#include "viewer/window/frame/case_files.h"

#include <QFile>
#include <QFileDialog>
#include <QFileInfo>

#include "viewer/window/frame/proposed_name.h"

namespace scalpmark::window {

namespace {

QString case_filter() {
  return CaseFiles::tr("Cases (*.json)");
}
QString head_filter() {
  return CaseFiles::tr("Heads (*.obj *.ply *.stl *.gltf *.glb *.nii *.nii.gz);;All files (*)");
}
QString open_filter() {
  return CaseFiles::tr(
      "Cases and heads (*.json *.obj *.ply *.stl *.gltf *.glb *.nii *.nii.gz);;All files (*)");
}

bool is_case(const QString& path) {
  return path.endsWith(QLatin1String(".json"), Qt::CaseInsensitive);
}

}  // namespace

CaseFiles::CaseFiles(Session& session, Settings& settings, QWidget& window)
    : ask_unsaved([&window] { return ask_about_unsaved(&window); }),
      ask_recover([&window](const Leftover& leftover) { return ask_about_leftover(&window, leftover); }),
      ask_replace([&window](const QString& path) { return ask_about_replacing(&window, path); }),
      ask_changed([&window](const QString& file) { return ask_about_changed(&window, file); }),
      session_(session),
      settings_(settings),
      window_(window) {}

void CaseFiles::begin(const QString& path) {
  if (!settings_.cautions_seen) {
    show_first_note(&window_);
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
    emit offers();
  } else {
    open_path(path);
    if (!session_.is_ready() && !session_.is_working()) emit offers();
  }
}

void CaseFiles::start_demo() {
  if (!may_leave()) return;
  emit starts_new();
  session_.start(demo_case());
}

void CaseFiles::start_new() {
  if (!may_leave()) return;
  emit starts_new();
  session_.start(models::default_case());
}

void CaseFiles::used(const QString& file) {
  settings_.used(file);
  settings_.write();
  emit recent_changed();
}

void CaseFiles::open_path(const QString& path) {
  emit notice({});
  if (is_case(path)) on_disk_.remember(path);
  const QString problem = session_.open(path);
  if (!problem.isEmpty())
    emit notice(problem);
  else if (is_case(path))
    used(QFileInfo(path).absoluteFilePath());
}

void CaseFiles::open_instead(const QString& path) {
  if (may_leave()) open_path(path);
}

void CaseFiles::take_dropped(const QString& path) {
  // A head is an edit of the case; another case replaces it.
  if (!is_case(path) || may_leave()) open_path(path);
}

bool CaseFiles::may_leave() {
  if (session_.is_saved() || !session_.is_ready()) return true;
  switch (ask_unsaved()) {
    case UnsavedAnswer::save:
      return save();
    case UnsavedAnswer::discard:
      return true;
    case UnsavedAnswer::cancel:
      break;
  }
  return false;
}

void CaseFiles::open() {
  if (!may_leave()) return;
  const QString path = QFileDialog::getOpenFileName(&window_, tr("Open a case or a head"), {}, open_filter());
  if (!path.isEmpty()) open_path(path);
}

void CaseFiles::open_head() {
  const QString path = QFileDialog::getOpenFileName(&window_, tr("Open a head"), {}, head_filter());
  if (!path.isEmpty()) open_path(path);
}

bool CaseFiles::may_save_to(const QString& path) {
  std::vector<models::Input> inputs = inputs_of(session_);
  // The case itself is what is saved.
  std::erase_if(inputs, [&](const models::Input& input) {
    return input.file == std::filesystem::path(session_.file().toStdString());
  });
  if (const QString problem = input_at(path, inputs); !problem.isEmpty()) {
    emit notice(problem);
    return false;
  }
  if (!may_replace(path, "scalpmark-case", ask_replace)) return false;
  if (!on_disk_.is_changed(path)) return true;
  switch (ask_changed(path)) {
    case ChangedAnswer::other_name:
      save_as();
      return false;  // done, or given up, there
    case ChangedAnswer::keep_both:
      if (QFile::copy(path, free_name_beside(path))) return true;
      emit notice(
          tr("The other version could not be put beside it, so nothing was saved; save under another name."));
      return false;
    case ChangedAnswer::cancel:
      break;
  }
  return false;
}

bool CaseFiles::save_to(const QString& path) {
  if (!may_save_to(path)) return session_.is_saved();
  const QString problem = session_.save(path);
  emit notice(problem);
  if (!problem.isEmpty()) return false;
  on_disk_.remember(path);
  used(session_.file());
  return true;
}

bool CaseFiles::save() {
  return session_.file().isEmpty() ? save_as() : save_to(session_.file());
}

bool CaseFiles::save_as() {
  const QString proposed = session_.file().isEmpty() ? proposed_name(session_.case_file().the_case.label, {},
                                                                     QDate::currentDate(), ".json")
                                                     : session_.file();
  QString path = QFileDialog::getSaveFileName(&window_, tr("Save the case"), proposed, case_filter());
  if (path.isEmpty()) return false;
  if (!is_case(path)) {
    path += QStringLiteral(".json");
    if (QFileInfo::exists(path) && !ask_replace(path)) return false;
  }
  return save_to(path);
}

}  // namespace scalpmark::window
