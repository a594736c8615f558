#include "viewer/words/in_language.h"

#include <filesystem>

#include "geometry/base/message.h"
#include "models/heads/own_program.h"
#include "viewer/words/error.h"

namespace scalpmark::viewer {

InLanguage::InLanguage(const std::string& language) : application_(count_, names_.data()) {
  if (language == "en") return;
  const std::filesystem::path beside = models::own_program().parent_path();
  for (const auto& folder :
       std::array{beside / "translations", beside.parent_path() / "share" / "scalpmark" / "translations"})
    if (texts_.load(QString::fromStdString("scalpmark_" + language),
                    QString::fromStdString(folder.string()))) {
      QCoreApplication::installTranslator(&texts_);
      return;
    }
  throw ViewerError(geometry::Message::of(
      "The language \"%1\" was not built with this program; build it, or leave --language out for English.",
      language));
}

InLanguage::~InLanguage() {
  QCoreApplication::removeTranslator(&texts_);
}

}  // namespace scalpmark::viewer
