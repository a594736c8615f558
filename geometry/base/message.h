#pragma once

#include <concepts>
#include <initializer_list>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

/// Tells lupdate the context of a class's patterns, the way Q_DECLARE_TR_FUNCTIONS does; nothing to a
/// compiler.
#define SCALPMARK_MESSAGES_IN(context)

namespace scalpmark::geometry {

/// A number in a message, so that a language can write it its own way (a decimal comma).
struct Number {
  double value = 0;
  int decimals = 0;
  bool padded = false;  ///< all decimals, zeros too: "5.0"; else none behind the last that counts: "5"
  [[nodiscard]] bool operator==(const Number& other) const = default;
};

/// At most that many decimals: "0.5", "5".
[[nodiscard]] inline Number number(double value, int decimals = 1) {
  return {value, decimals, false};
}

/// As it is written with this sign before the decimals.
[[nodiscard]] std::string to_text(const Number& number, std::string_view decimal_mark = ".");

struct Argument;

/// What is said to people (a refusal, a warning, a note, a name) as a value: an English pattern with %1 to %9
/// and what stands there: text in no language (a file's name), a number, another message. English and every
/// other language are made from the same pattern and arguments; nothing takes a sentence apart again.
/// Patterns are written where they are meant, as Message::of("..."), each literally, so that lupdate collects
/// them for translators under the context "Message".
class Message {
  SCALPMARK_MESSAGES_IN(Message)
public:
  Message() = default;

  template <class... Arguments>
  [[nodiscard]] static Message of(const char* pattern, const Arguments&... arguments) {
    return made(pattern, {Argument(arguments)...});
  }
  /// Text that is in no language of ours: what a library or the system says.
  [[nodiscard]] static Message verbatim(const std::string& text);
  /// One that comes from elsewhere, such as the process that reads files.
  [[nodiscard]] static Message made(std::string pattern, std::vector<Argument> arguments);

  [[nodiscard]] bool empty() const { return pattern_.empty(); }
  [[nodiscard]] const std::string& pattern() const { return pattern_; }
  [[nodiscard]] const std::vector<Argument>& arguments() const { return arguments_; }
  [[nodiscard]] bool operator==(const Message& other) const;

private:
  std::string pattern_;
  std::vector<Argument> arguments_;
};

/// The text on one line, in the order in which it is read: characters that end lines, steer a terminal or
/// turn the direction of writing are written as JSON escapes them (\n, \u001b). What somebody's file or its
/// name holds must neither break a sentence nor be obeyed by what shows it.
[[nodiscard]] std::string on_one_line(std::string_view text);

/// What stands in place of a %1: text (on one line), a number, another message. Whole numbers are taken as
/// they are; for others say how many decimals.
struct Argument {
  std::variant<std::string, Number, Message> value;

  // NOLINTBEGIN(google-explicit-constructor)
  template <std::convertible_to<std::string_view> Text>
  Argument(const Text& text) : value(on_one_line(text)) {}
  Argument(Number number) : value(number) {}
  Argument(Message message) : value(std::move(message)) {}
  template <std::integral Whole>
  Argument(Whole whole) : value(Number{static_cast<double>(whole)}) {}
  // NOLINTEND(google-explicit-constructor)

  [[nodiscard]] bool operator==(const Argument& other) const = default;
};

/// The pattern with its %1 to %9 replaced, all at once: a part's own signs are left alone, and so is a number
/// that has no part.
[[nodiscard]] std::string filled(std::string_view pattern, const std::vector<std::string>& parts);

/// The message in English.
[[nodiscard]] std::string english(const Message& message);
/// Each in English.
[[nodiscard]] std::vector<std::string> english(const std::vector<Message>& messages);

}  // namespace scalpmark::geometry
