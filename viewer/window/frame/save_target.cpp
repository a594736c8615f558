#include "viewer/window/frame/save_target.h"

#include "models/cases/case_inputs.h"
#include "viewer/words/words.h"

namespace scalpmark::window {

std::vector<models::Input> inputs_of(const Session& session) {
  return models::inputs_of(session.file().toStdString(), session.case_file(), session.template_files());
}

QString input_at(const QString& path, const std::vector<models::Input>& inputs) {
  try {
    models::refuse_input_as_output(path.toStdString(), inputs);
  } catch (const std::exception& refusal) {
    return viewer::translated(refusal);
  }
  return {};
}

bool may_replace(const QString& path, const std::string& format, const AskReplace& ask) {
  return !models::replaces_another_kind(path.toStdString(), format) || ask(path);
}

}  // namespace scalpmark::window
