#include "viewer/words/numbers.h"

#include <cmath>
#include <cstdio>

#include "viewer/words/words.h"

namespace scalpmark::viewer {

namespace {

std::string one_decimal(double value) {
  char text[64];
  std::snprintf(text, sizeof text, "%.1f", std::abs(value) < 0.05 ? 0.0 : value);
  return text;
}

}  // namespace

std::string cm(double mm) {
  return one_decimal(mm / 10);
}
std::string in_cm(double mm) {
  return said(Words::tr("%1 cm"), {cm(mm)});
}
std::string millimetres(double mm) {
  return one_decimal(mm);
}
std::string in_mm(double mm) {
  return said(Words::tr("%1 mm"), {millimetres(mm)});
}
std::string in_degrees(double deg) {
  return std::to_string(std::lround(deg)) + "\u00b0";
}

}  // namespace scalpmark::viewer
