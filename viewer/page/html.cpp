#include "viewer/page/html.h"

#include "viewer/words/words.h"

namespace scalpmark::viewer {

std::string escaped(std::string_view text) {
  std::string out;
  for (const char c : text) switch (c) {
      case '<':
        out += "&lt;";
        break;
      case '>':
        out += "&gt;";
        break;
      case '&':
        out += "&amp;";
        break;
      case '"':
        out += "&quot;";
        break;
      case '\'':
        out += "&#39;";
        break;
      default:
        out += c;
    }
  return out;
}

std::string html_words(const QString& text, const std::vector<std::string>& parts) {
  return escaped(words(text, parts));
}

}  // namespace scalpmark::viewer
