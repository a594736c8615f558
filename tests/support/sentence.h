#pragma once

#include <cctype>
#include <string>

namespace scalpmark::tests {

/// The sentence that an error of the given type carries; "(accepted)" when nothing is thrown.
template <class Error, class Action>
std::string sentence_of(Action action) {
  try {
    action();
  } catch (const Error& error) {
    return error.what();
  }
  return "(accepted)";
}

/// Whether a text reads as one sentence on one line: ends with a full stop, no line ends, neither cut short
/// nor without end.
inline bool is_sentence(const std::string& text) {
  return text.size() > 20 && text.size() <= 1000 && text.back() == '.' &&
         text.find('\n') == std::string::npos;
}

}  // namespace scalpmark::tests
