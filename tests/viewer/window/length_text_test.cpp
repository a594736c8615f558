#include "viewer/window/fields/length_text.h"

#include <catch2/catch.hpp>

#include "geometry/base/ranges.h"

using namespace scalpmark::window;
namespace ranges = scalpmark::geometry::ranges;

TEST_CASE("a length is read with a point or a comma, in centimetres, with a unit of its own or without") {
  const auto read = [](const char* text, LengthUnit unit = LengthUnit::centimetre) {
    return read_length(QString::fromUtf8(text), unit, ranges::nasion_inion_mm, "Nasion to inion");
  };
  CHECK(read("36.2").mm == 362);
  CHECK(read(" 36,2 ").mm == 362);
  CHECK(read("36.2 cm").mm == 362);
  CHECK(read("362mm").mm == 362);
  // One inch is 25.4 mm (international yard and pound agreement, 1959).
  CHECK(read("14 1/4", LengthUnit::inch).mm == Approx(14.25 * 25.4).margin(0.001));
  CHECK(read("14.25", LengthUnit::inch).mm == Approx(14.25 * 25.4).margin(0.001));
  CHECK(read("14,25 in").mm == Approx(14.25 * 25.4).margin(0.001));
  CHECK(read("36.2 cm", LengthUnit::inch).mm == 362);
}

TEST_CASE("what is no length gets a sentence that names the field and the range") {
  for (const char* text : {"thirty", "36.2.1", "3 6", "1e3", "nan", "inf", "--3", "14 1/0", "cm"}) {
    const auto reading =
        read_length(text, LengthUnit::centimetre, ranges::nasion_inion_mm, "Nasion to inion");
    INFO(text);
    CHECK_FALSE(reading.mm);
    CHECK(reading.problem.startsWith(QString::fromUtf8("\u201cNasion to inion\u201d")));
    CHECK(reading.problem.endsWith("."));
  }
  const auto far = read_length("50", LengthUnit::centimetre, ranges::nasion_inion_mm, "Nasion to inion");
  CHECK_FALSE(far.mm);
  CHECK(far.problem.contains("28.0"));
  CHECK(far.problem.contains("44.0"));
  // Typed without its point, it is asked back; so far off that no point helps, it is not.
  const auto pointless =
      read_length("362", LengthUnit::centimetre, ranges::nasion_inion_mm, "Nasion to inion");
  CHECK_FALSE(pointless.mm);
  CHECK(pointless.problem.endsWith("Is it 36.2?"));
  CHECK_FALSE(far.problem.contains("Is it"));
  const auto empty = read_length("  ", LengthUnit::centimetre, ranges::nasion_inion_mm, "Nasion to inion");
  CHECK_FALSE(empty.mm);
  CHECK(empty.problem.isEmpty());
}

TEST_CASE("the ends of every range can be typed as they are shown, in either unit") {
  for (const auto& range : {ranges::nasion_inion_mm, ranges::circumference_mm, ranges::lateral_mm,
                            ranges::anterior_mm, ranges::centre_to_edge_mm, ranges::lift_mm})
    for (const double end : {range.low, range.high}) {
      const auto reading =
          read_length(length_text(end, LengthUnit::centimetre), LengthUnit::centimetre, range, "Length");
      CHECK(reading.mm == end);
    }
}

TEST_CASE("angles are whole degrees") {
  CHECK(read_angle("45", ranges::angle_deg, "Angle").degrees == 45);
  CHECK(read_angle("-30\u00b0", ranges::angle_deg, "Angle").degrees == -30);
  CHECK_FALSE(read_angle("45.5", ranges::angle_deg, "Angle").problem.isEmpty());
  CHECK_FALSE(read_angle("200", ranges::angle_deg, "Angle").problem.isEmpty());
}
