#include "viewer/words/plain_text.h"

#include <sstream>

namespace scalpmark::viewer {

namespace {

constexpr std::size_t line_length = 80;

}  // namespace

std::string padded(const std::string& text, std::size_t width) {
  return text + std::string(width > text.size() ? width - text.size() : 1, ' ');
}

std::string to_the_right(const std::string& text, std::size_t width) {
  return std::string(width > text.size() ? width - text.size() : 0, ' ') + text;
}

std::string wrapped_text(const std::string& text) {
  std::istringstream in(text);
  std::string all, line;
  for (std::string word; in >> word;) {
    if (!line.empty() && line.size() + 1 + word.size() > line_length) {
      all += line + "\n";
      line.clear();
    }
    line += (line.empty() ? "" : " ") + word;
  }
  return all + line + "\n";
}

}  // namespace scalpmark::viewer
