#include "viewer/words/inch_words.h"

#include <cctype>
#include <cmath>
#include <optional>
#include <string_view>
#include <variant>

#include "viewer/words/numbers.h"
#include "viewer/words/words.h"

namespace scalpmark::viewer {

using geometry::Argument;
using geometry::Number;

namespace {

constexpr double inch_in_mm = 25.4;
constexpr std::string_view square = "\u00b2", hard_space = "\u00a0";
/// No finer than a tape shows, but not nothing for what is less.
constexpr int inch_decimals = 2, fine_inch_decimals = 3;
constexpr double fine_below_in = 0.05;

/// "%1" in a pattern.
struct Spelled {
  size_t at = 0;
  size_t part = 0;
};

std::vector<Spelled> places_in(const std::string& pattern) {
  std::vector<Spelled> all;
  for (size_t i = 0; i + 1 < pattern.size(); ++i)
    if (pattern[i] == '%' && pattern[i + 1] >= '1' && pattern[i + 1] <= '9')
      all.push_back({i, static_cast<size_t>(pattern[i + 1] - '1')});
  return all;
}

/// A metric unit that stands there: what it takes up, and how much of an inch (or square inch) it is.
struct MetricUnit {
  size_t begins = 0, ends = 0;
  double in_inches = 0;
  bool is_square = false;
};

std::optional<MetricUnit> unit_at(const std::string& pattern, size_t from) {
  const std::string_view text(pattern);
  size_t at = from;
  if (text.substr(at).starts_with(hard_space))
    at += hard_space.size();
  else if (text.substr(at).starts_with(' '))
    ++at;
  else
    return {};
  double mm = 0;
  if (text.substr(at).starts_with("cm"))
    mm = 10;
  else if (text.substr(at).starts_with("mm"))
    mm = 1;
  else
    return {};
  MetricUnit unit{at, at + 2, mm / inch_in_mm, false};
  if (unit.ends < text.size() && std::isalpha(static_cast<unsigned char>(text[unit.ends])) != 0) return {};
  if (text.substr(unit.ends).starts_with(square)) {
    unit.ends += square.size();
    unit.is_square = true;
    unit.in_inches *= unit.in_inches;
  }
  return unit;
}

/// " to " between two numbers: one short word, so that both have the unit behind the second.
bool is_one_word(std::string_view between) {
  constexpr size_t longest = 7;
  if (between.size() < 3 || between.size() > longest || between.front() != ' ' || between.back() != ' ')
    return false;
  return between.substr(1, between.size() - 2).find(' ') == std::string_view::npos;
}

std::string inches_of(const Number& number, const MetricUnit& unit) {
  const double value = number.value * unit.in_inches;
  const int decimals = unit.is_square                                  ? 1
                       : std::abs(value) < fine_below_in && value != 0 ? fine_inch_decimals
                                                                       : inch_decimals;
  return geometry::to_text(Number{value, decimals, true}, decimal_mark());
}

}  // namespace

FilledPattern in_inches(FilledPattern filled, const std::vector<Argument>& arguments) {
  const std::vector<Spelled> places = places_in(filled.pattern);
  const auto number_of = [&](const Spelled& place) -> const Number* {
    return place.part < arguments.size() ? std::get_if<Number>(&arguments[place.part].value) : nullptr;
  };
  // From the end, so that places before stay where they are.
  for (size_t i = places.size(); i-- > 0;) {
    const auto unit = unit_at(filled.pattern, places[i].at + 2);
    if (!unit || number_of(places[i]) == nullptr) continue;
    filled.parts[places[i].part] = inches_of(*number_of(places[i]), *unit);
    for (size_t k = i; k-- > 0 && number_of(places[k]) != nullptr;) {
      const size_t after = places[k].at + 2;
      if (!is_one_word(std::string_view(filled.pattern).substr(after, places[k + 1].at - after))) break;
      filled.parts[places[k].part] = inches_of(*number_of(places[k]), *unit);
    }
    filled.pattern.replace(unit->begins, unit->ends - unit->begins,
                           tape_unit() + (unit->is_square ? std::string(square) : std::string()));
  }
  return filled;
}

std::string whole_length(double mm) {
  return length_unit() == LengthUnit::inch ? small_length(mm) : rough_length(mm);
}

}  // namespace scalpmark::viewer
