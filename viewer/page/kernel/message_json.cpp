#include "viewer/page/kernel/message_json.h"

#include <variant>

namespace scalpmark::viewer {

using nlohmann::ordered_json;

ordered_json message_json(const geometry::Message& message) {
  ordered_json out;
  out["pattern"] = message.pattern();
  out["parts"] = ordered_json::array();
  for (const geometry::Argument& argument : message.arguments()) {
    if (const auto* text = std::get_if<std::string>(&argument.value)) out["parts"].push_back(*text);
    if (const auto* number = std::get_if<geometry::Number>(&argument.value))
      out["parts"].push_back(
          {{"value", number->value}, {"decimals", number->decimals}, {"padded", number->padded}});
    if (const auto* nested = std::get_if<geometry::Message>(&argument.value))
      out["parts"].push_back(message_json(*nested));
  }
  return out;
}

}  // namespace scalpmark::viewer
