#include "geometry/plan/date.h"

#include <array>
#include <cstddef>

namespace scalpmark::geometry {

namespace {

constexpr int first_year = 1900, last_year = 2199;

/// Three numbers of so many digits each with `mark` between them.
std::optional<std::array<int, 3>> three_numbers(std::string_view text,
                                                const std::array<std::size_t, 3>& digits, char mark) {
  std::array<int, 3> numbers{};
  std::size_t at = 0;
  for (std::size_t i = 0; i < 3; ++i) {
    if (i > 0 && (at >= text.size() || text[at++] != mark)) return {};
    for (std::size_t k = 0; k < digits[i]; ++k, ++at) {
      if (at >= text.size() || text[at] < '0' || text[at] > '9') return {};
      numbers[i] = 10 * numbers[i] + (text[at] - '0');
    }
  }
  if (at != text.size()) return {};
  return numbers;
}

int days_in(int year, int month) {
  constexpr std::array<int, 12> days{31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
  const bool leap = (year % 4 == 0 && year % 100 != 0) || year % 400 == 0;
  return days[static_cast<std::size_t>(month - 1)] + (leap && month == 2 ? 1 : 0);
}

std::string with_digits(int number, std::size_t digits) {
  const std::string text = std::to_string(number);
  return std::string(digits > text.size() ? digits - text.size() : 0, '0') + text;
}

}  // namespace

std::optional<Date> date_from(std::string_view text) {
  const auto numbers = three_numbers(text, {4, 2, 2}, '-');
  if (!numbers) return {};
  const auto [year, month, day] = *numbers;
  if (year < first_year || year > last_year || month < 1 || month > 12 || day < 1 ||
      day > days_in(year, month))
    return {};
  return Date{year, month, day};
}

std::string iso(const Date& date) {
  return with_digits(date.year, 4) + "-" + with_digits(date.month, 2) + "-" + with_digits(date.day, 2);
}

std::optional<TimeOfDay> time_from(std::string_view text) {
  const auto numbers = three_numbers(text, {2, 2, 2}, ':');
  if (!numbers) return {};
  const auto [hour, minute, second] = *numbers;
  if (hour > 23 || minute > 59 || second > 59) return {};
  return TimeOfDay{hour, minute, second};
}

std::string iso(const TimeOfDay& time) {
  return with_digits(time.hour, 2) + ":" + with_digits(time.minute, 2) + ":" + with_digits(time.second, 2);
}

}  // namespace scalpmark::geometry
