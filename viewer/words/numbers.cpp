#include "viewer/words/numbers.h"

#include <cmath>

#include "viewer/words/words.h"

namespace scalpmark::viewer {

namespace {

std::string one_decimal(double value) {
  return geometry::to_text(geometry::Number{std::abs(value) < 0.05 ? 0.0 : value, 1, true}, decimal_mark());
}

}  // namespace

std::string cm(double mm) {
  return one_decimal(mm / 10);
}
std::string in_cm(double mm) {
  return words(Words::tr("%1 cm"), {cm(mm)});
}
std::string millimetres(double mm) {
  return one_decimal(mm);
}
std::string in_mm(double mm) {
  return words(Words::tr("%1 mm"), {millimetres(mm)});
}
std::string in_degrees(double deg) {
  return std::to_string(std::lround(deg)) + "\u00b0";
}

}  // namespace scalpmark::viewer
