#pragma once

#include <cmath>
#include <cstdio>
#include <string>

namespace scalpmark::geometry {

/// A number for a sentence: at most `digits` decimals, no trailing zeros.
[[nodiscard]] inline std::string to_text(double value, int digits = 1) {
  char buffer[64];
  std::snprintf(buffer, sizeof buffer, "%.*f", digits, value);
  std::string text = buffer;
  if (text.find('.') != std::string::npos) {
    while (text.back() == '0') text.pop_back();
    if (text.back() == '.') text.pop_back();
  }
  return text == "-0" ? "0" : text;
}

}  // namespace scalpmark::geometry
