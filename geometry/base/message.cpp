#include "geometry/base/message.h"

#include <algorithm>
#include <cstdio>

#include "geometry/base/text.h"

namespace scalpmark::geometry {

std::string to_text(const Number& number, std::string_view decimal_mark) {
  const int decimals = std::clamp(number.decimals, 0, 9);
  std::string text;
  if (number.padded) {
    char buffer[64];
    std::snprintf(buffer, sizeof buffer, "%.*f", decimals, number.value);
    text = buffer;
  } else {
    text = to_text(number.value, decimals);
  }
  if (const size_t point = text.find('.'); point != std::string::npos) text.replace(point, 1, decimal_mark);
  return text;
}

Message Message::verbatim(std::string text) {
  return made("%1", {Argument(std::move(text))});
}

Message Message::made(std::string pattern, std::vector<Argument> arguments) {
  Message message;
  message.pattern_ = std::move(pattern);
  message.arguments_ = std::move(arguments);
  return message;
}

bool Message::operator==(const Message& other) const {
  return pattern_ == other.pattern_ && arguments_ == other.arguments_;
}

std::string filled(std::string_view pattern, const std::vector<std::string>& parts) {
  std::string text;
  for (size_t i = 0; i < pattern.size(); ++i) {
    const bool numbered = pattern[i] == '%' && i + 1 < pattern.size() && pattern[i + 1] >= '1' &&
                          pattern[i + 1] <= '9' && static_cast<size_t>(pattern[i + 1] - '1') < parts.size();
    if (numbered)
      text += parts[static_cast<size_t>(pattern[++i] - '1')];
    else
      text += pattern[i];
  }
  return text;
}

std::string english(const Message& message) {
  std::vector<std::string> parts;
  for (const Argument& argument : message.arguments()) {
    if (const auto* text = std::get_if<std::string>(&argument.value)) parts.push_back(*text);
    if (const auto* number = std::get_if<Number>(&argument.value)) parts.push_back(to_text(*number));
    if (const auto* nested = std::get_if<Message>(&argument.value)) parts.push_back(english(*nested));
  }
  return filled(message.pattern(), parts);
}

std::vector<std::string> english(const std::vector<Message>& messages) {
  std::vector<std::string> all;
  for (const Message& message : messages) all.push_back(english(message));
  return all;
}

}  // namespace scalpmark::geometry
