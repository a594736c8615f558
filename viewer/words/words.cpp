#include "viewer/words/words.h"

#include <variant>

#include "viewer/words/inch_words.h"
#include "viewer/words/numbers.h"
#include "viewer/words/trouble_words.h"

namespace scalpmark::viewer {

using geometry::Message;

std::string words(const QString& text, const std::vector<std::string>& parts) {
  return geometry::filled(text.toStdString(), parts);
}

std::string words(const Message& message) {
  std::vector<std::string> parts;
  for (const geometry::Argument& argument : message.arguments()) {
    if (const auto* text = std::get_if<std::string>(&argument.value)) parts.push_back(*text);
    if (const auto* number = std::get_if<geometry::Number>(&argument.value))
      parts.push_back(geometry::to_text(*number, decimal_mark()));
    if (const auto* nested = std::get_if<Message>(&argument.value)) parts.push_back(words(*nested));
  }
  // By name: lupdate has found the patterns where they are written.
  FilledPattern filled{QCoreApplication::translate("Message", message.pattern().c_str()).toStdString(),
                       std::move(parts)};
  if (length_unit() == LengthUnit::inch) filled = in_inches(std::move(filled), message.arguments());
  return geometry::filled(filled.pattern, filled.parts);
}

QString translated(const Message& message) {
  return QString::fromStdString(words(message));
}

QString translated(const std::exception& error) {
  return translated(message_of(error));
}

std::string decimal_mark() {
  return words(Words::tr(".", "what stands before decimals: 5.0"));
}

}  // namespace scalpmark::viewer
