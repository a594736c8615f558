#pragma once

#include <compare>
#include <optional>
#include <string>
#include <string_view>

namespace scalpmark::geometry {

/// A day of the Gregorian calendar.
struct Date {
  int year = 0, month = 0, day = 0;

  friend auto operator<=>(const Date&, const Date&) = default;
};

/// A time of day on the clock where it was read, to the second.
struct TimeOfDay {
  int hour = 0, minute = 0, second = 0;

  friend auto operator<=>(const TimeOfDay&, const TimeOfDay&) = default;
};

// As ISO 8601 writes them (extended calendar date, extended local time), and no other way.

/// "2026-11-26"; none for other text and for days that no calendar has. Years from 1900 to 2199.
[[nodiscard]] std::optional<Date> date_from(std::string_view text);
[[nodiscard]] std::string iso(const Date& date);
/// "10:32:05".
[[nodiscard]] std::optional<TimeOfDay> time_from(std::string_view text);
[[nodiscard]] std::string iso(const TimeOfDay& time);

}  // namespace scalpmark::geometry
