#include "geometry/plan/date.h"

#include <catch2/catch.hpp>

#include "geometry/plan/visit.h"

using namespace scalpmark::geometry;

TEST_CASE("dates are those of the Gregorian calendar, written as ISO 8601 writes them") {
  // Leap years: every fourth, not the hundredth, the four hundredth again (Inter gravissimas, 1582).
  for (const char* day :
       {"2026-11-26", "2024-02-29", "2000-02-29", "1999-12-31", "1900-01-01", "2199-12-31"}) {
    CAPTURE(day);
    REQUIRE(date_from(day));
    CHECK(iso(*date_from(day)) == day);
  }
  for (const char* none :
       {"", "2026-11-31", "2023-02-29", "1900-02-29", "2100-02-29", "2026-00-10", "2026-13-01", "2026-01-00",
        "26-11-2026", "2026-1-2", "2026/11/26", "2026-11-26 ", " 2026-11-26", "2026-11-26T10:00",
        "1899-12-31", "2200-01-01", "+026-11-26", "2026-W48-4", "20261126"}) {
    CAPTURE(none);
    CHECK_FALSE(date_from(none));
  }
  CHECK(*date_from("2026-11-26") == Date{2026, 11, 26});
  CHECK(*date_from("2025-12-31") < *date_from("2026-01-01"));
}

TEST_CASE("times of day are written to the second") {
  for (const char* time : {"00:00:00", "10:32:05", "23:59:59"}) {
    REQUIRE(time_from(time));
    CHECK(iso(*time_from(time)) == time);
  }
  for (const char* none :
       {"", "24:00:00", "10:60:00", "10:00:60", "10:32", "10:32:05Z", "1:02:03", "10.32.05"}) {
    CAPTURE(none);
    CHECK_FALSE(time_from(none));
  }
  CHECK(*time_from("10:32:05") == TimeOfDay{10, 32, 5});
}

TEST_CASE("a visit dated before the one entered before it is out of order, a second on one day is not") {
  Visits visits;
  for (const char* day : {"2026-11-02", "2026-11-03", "2026-11-03", "2026-11-01", "2026-11-02"}) {
    Visit visit;
    visit.date = *date_from(day);
    visits.emplace_back(visit);
  }
  CHECK(out_of_order(visits) == std::vector<std::size_t>{3});
  CHECK(out_of_order({}).empty());
}
