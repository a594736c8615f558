#include "viewer/words/numbers.h"

#include <atomic>
#include <cmath>

#include "viewer/words/words.h"

namespace scalpmark::viewer {

namespace {

constexpr double mm_per_cm = 10, mm_per_inch = 25.4;

// Sheets are made in threads of their own.
std::atomic<LengthUnit> shown_in = LengthUnit::centimetre;

bool inches() {
  return shown_in == LengthUnit::inch;
}

/// Without a minus before nothing.
std::string decimal(double value, int decimals) {
  const double nothing = 0.5 * std::pow(10.0, -decimals);
  return geometry::to_text(geometry::Number{std::abs(value) < nothing ? 0.0 : value, decimals, true},
                           decimal_mark());
}

}  // namespace

void set_length_unit(LengthUnit unit) {
  shown_in = unit;
}
LengthUnit length_unit() {
  return shown_in;
}

std::string tape_number(double mm) {
  return inches() ? decimal(mm / mm_per_inch, 2) : decimal(mm / mm_per_cm, 1);
}
std::string half_of_tape(double mm) {
  const double read =
      inches() ? std::round(100 * mm / mm_per_inch) / 100 : std::round(10 * mm / mm_per_cm) / 10;
  const int decimals = inches() ? 2 : 1;
  const double scale = std::pow(10.0, decimals);
  const bool whole = std::abs(std::round(scale * read / 2) - scale * read / 2) < 1e-6;
  const std::string number = decimal(read / 2, whole ? decimals : decimals + 1);
  return inches() ? words(Words::tr("%1 in", "inches"), {number}) : words(Words::tr("%1 cm"), {number});
}
std::string tape_unit() {
  return inches() ? words(Words::tr("in", "inches")) : words(Words::tr("cm"));
}
std::string one_tape_unit() {
  return inches() ? words(Words::tr("inch", "a tick each inch")) : tape_unit();
}
std::string tape_length(double mm) {
  return inches() ? words(Words::tr("%1 in", "inches"), {tape_number(mm)})
                  : words(Words::tr("%1 cm"), {tape_number(mm)});
}
std::string small_number(double mm) {
  return inches() ? decimal(mm / mm_per_inch, 2) : decimal(mm, 1);
}
std::string small_unit() {
  return inches() ? words(Words::tr("in", "inches")) : words(Words::tr("mm"));
}
std::string small_length(double mm) {
  return inches() ? words(Words::tr("%1 in", "inches"), {small_number(mm)})
                  : words(Words::tr("%1 mm"), {small_number(mm)});
}
std::string rough_number(double mm) {
  return inches() ? decimal(mm / mm_per_inch, 1) : decimal(mm, 0);
}
std::string rough_length(double mm) {
  return inches() ? words(Words::tr("%1 in", "inches"), {rough_number(mm)})
                  : words(Words::tr("%1 mm"), {rough_number(mm)});
}
double tape_tick_mm() {
  return inches() ? mm_per_inch : mm_per_cm;
}
std::string in_degrees(double deg) {
  return std::to_string(std::lround(deg)) + "\u00b0";
}
std::string coil_angle(double deg) {
  return words(std::lround(deg) < 0 ? Words::tr("%1 away from the midline", "an angle")
                                    : Words::tr("%1 to the midline", "an angle"),
               {in_degrees(std::abs(deg))});
}

}  // namespace scalpmark::viewer
