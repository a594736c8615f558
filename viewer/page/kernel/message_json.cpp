#include "viewer/page/kernel/message_json.h"

#include <cmath>
#include <variant>

namespace scalpmark::viewer {

using nlohmann::ordered_json;

namespace {

/// No finer than it is said: behind that, the sine of one machine is not that of another.
double as_said(const geometry::Number& number) {
  const double steps = std::pow(10.0, number.decimals);
  return std::round(number.value * steps) / steps + 0.0;
}

}  // namespace

ordered_json message_json(const geometry::Message& message) {
  ordered_json out;
  out["pattern"] = message.pattern();
  out["parts"] = ordered_json::array();
  for (const geometry::Argument& argument : message.arguments()) {
    if (const auto* text = std::get_if<std::string>(&argument.value)) out["parts"].push_back(*text);
    if (const auto* number = std::get_if<geometry::Number>(&argument.value))
      out["parts"].push_back(
          {{"value", as_said(*number)}, {"decimals", number->decimals}, {"padded", number->padded}});
    if (const auto* nested = std::get_if<geometry::Message>(&argument.value))
      out["parts"].push_back(message_json(*nested));
  }
  return out;
}

}  // namespace scalpmark::viewer
