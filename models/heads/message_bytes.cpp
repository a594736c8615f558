#include "models/heads/message_bytes.h"

#include <cstdint>
#include <cstring>
#include <variant>
#include <vector>

#include "models/files/error.h"

namespace scalpmark::models {

namespace {

using geometry::Argument;
using geometry::Message;
using geometry::Number;

constexpr std::size_t longest = 64 << 10U, most_arguments = 9;
constexpr int deepest_nesting = 8;
constexpr char text_mark = 't', number_mark = 'n', message_mark = 'm';

template <class Value>
void put(std::string& out, const Value& value) {
  char raw[sizeof value];
  std::memcpy(raw, &value, sizeof value);
  out.append(raw, sizeof value);
}

void put_text(std::string& out, const std::string& text) {
  put(out, static_cast<std::uint32_t>(text.size()));
  out += text;
}

void put_message(std::string& out, const Message& message) {
  put_text(out, message.pattern());
  put(out, static_cast<std::uint8_t>(message.arguments().size()));
  for (const Argument& argument : message.arguments()) {
    if (const auto* text = std::get_if<std::string>(&argument.value)) {
      out += text_mark;
      put_text(out, *text);
    } else if (const auto* number = std::get_if<Number>(&argument.value)) {
      out += number_mark;
      put(out, number->value);
      put(out, static_cast<std::uint8_t>(number->decimals));
      put(out, static_cast<std::uint8_t>(number->padded ? 1 : 0));
    } else {
      out += message_mark;
      put_message(out, std::get<Message>(argument.value));
    }
  }
}

/// Takes values off the front of bytes that may be anything.
class Taker {
public:
  explicit Taker(std::string_view bytes) : left_(bytes) {}

  [[nodiscard]] bool at_end() const { return left_.empty(); }

  std::optional<Message> message(int depth = 1) {
    auto pattern = text();
    std::uint8_t count = 0;
    if (depth > deepest_nesting || !pattern || !take(count) || count > most_arguments) return {};
    std::vector<Argument> arguments;
    for (std::uint8_t i = 0; i < count; ++i) {
      auto next = argument(depth);
      if (!next) return {};
      arguments.push_back(std::move(*next));
    }
    return Message::made(std::move(*pattern), std::move(arguments));
  }

private:
  template <class Value>
  bool take(Value& value) {
    if (left_.size() < sizeof value) return false;
    std::memcpy(&value, left_.data(), sizeof value);
    left_.remove_prefix(sizeof value);
    return true;
  }

  std::optional<std::string> text() {
    std::uint32_t length = 0;
    if (!take(length) || length > left_.size()) return {};
    std::string text(left_.substr(0, length));
    left_.remove_prefix(length);
    return text;
  }

  std::optional<Argument> argument(int depth) {
    char mark = 0;
    if (!take(mark)) return {};
    if (mark == text_mark) {
      auto taken = text();
      if (taken) return Argument(*taken);
    } else if (mark == message_mark) {
      auto taken = message(depth + 1);
      if (taken) return Argument(std::move(*taken));
    } else if (mark == number_mark) {
      Number number;
      std::uint8_t decimals = 0, padded = 0;
      if (!take(number.value) || !take(decimals) || !take(padded) || decimals > 9 || padded > 1) return {};
      number.decimals = decimals;
      number.padded = padded == 1;
      return Argument(number);
    }
    return {};
  }

  std::string_view left_;
};

}  // namespace

std::string bytes_of(const Message& message) {
  std::string out;
  put_message(out, message);
  return out;
}

std::optional<Message> message_from(std::string_view bytes) {
  if (bytes.size() > longest) return {};
  Taker taker(bytes);
  auto message = taker.message();
  if (!message || !taker.at_end()) return {};
  return message;
}

}  // namespace scalpmark::models
