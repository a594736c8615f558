#include "geometry/base/message.h"

#include <algorithm>
#include <cstdio>
#include <utility>

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

namespace {

/// The code point of the character of UTF-8 that begins there, and how many bytes it has; bytes that are no
/// such character count one by one, as themselves.
std::pair<unsigned, std::size_t> character_at(std::string_view text, std::size_t at) {
  const auto byte = [&](std::size_t i) {
    return at + i < text.size() ? static_cast<unsigned>(static_cast<unsigned char>(text[at + i])) : 0U;
  };
  const auto follows = [&](std::size_t i) { return (byte(i) & 0xC0U) == 0x80U; };
  if ((byte(0) & 0xE0U) == 0xC0U && follows(1)) return {(byte(0) & 0x1FU) << 6U | (byte(1) & 0x3FU), 2};
  if ((byte(0) & 0xF0U) == 0xE0U && follows(1) && follows(2))
    return {(byte(0) & 0x0FU) << 12U | (byte(1) & 0x3FU) << 6U | (byte(2) & 0x3FU), 3};
  return {byte(0), 1};
}

/// Control characters (C0, C1), ends of lines and paragraphs, and what turns the direction of writing
/// (Unicode Standard Annex 9, table of explicit formatting characters).
bool is_obeyed(unsigned code, std::size_t bytes) {
  if (bytes == 1) return code < 0x20 || code == 0x7F;
  return (code >= 0x80 && code < 0xA0) || code == 0x061C || code == 0x200E || code == 0x200F ||
         (code >= 0x2028 && code <= 0x202E) || (code >= 0x2066 && code <= 0x2069);
}

std::string escaped(unsigned code) {
  switch (code) {
    case '\b':
      return "\\b";
    case '\f':
      return "\\f";
    case '\n':
      return "\\n";
    case '\r':
      return "\\r";
    case '\t':
      return "\\t";
    default:
      break;
  }
  char buffer[16];
  std::snprintf(buffer, sizeof buffer, "\\u%04x", code);
  return buffer;
}

}  // namespace

std::string on_one_line(std::string_view text) {
  std::string line;
  for (std::size_t at = 0; at < text.size();) {
    const auto [code, bytes] = character_at(text, at);
    line += is_obeyed(code, bytes) ? escaped(code) : std::string(text.substr(at, bytes));
    at += bytes;
  }
  return line;
}

Message Message::verbatim(const std::string& text) {
  return made("%1", {Argument(text)});
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
