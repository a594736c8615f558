#pragma once

#include <QCoreApplication>
#include <QTranslator>
#include <array>
#include <string>

namespace scalpmark::viewer {

/// Every text of the program in another language, as long as this lives: for a command, which else stays
/// English. There must be no other application object. Refuses (ViewerError) a language that was not built.
class InLanguage {
public:
  /// `language`: by ISO 639-1, "de"; "en" is the program's own.
  explicit InLanguage(const std::string& language);
  ~InLanguage();
  InLanguage(const InLanguage&) = delete;
  InLanguage& operator=(const InLanguage&) = delete;

private:
  // Qt wants a command line to look into.
  std::string name_ = "scalpmark";
  int count_ = 1;
  std::array<char*, 2> names_{name_.data(), nullptr};
  QCoreApplication application_;
  QTranslator texts_;
};

}  // namespace scalpmark::viewer
