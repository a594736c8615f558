#include "geometry/answers/control_chart.h"

#include <catch2/catch.hpp>
#include <cmath>

#include "geometry/base/error.h"
#include "tests/support/sentence.h"

using namespace scalpmark::geometry;
using namespace scalpmark::tests;

TEST_CASE("limits are those of the handbook's flow rates") {
  // NIST/SEMATECH e-Handbook 6.3.2.2, worked example (memory): centre 50.81, mean moving range 1.8778, limits
  // 45.8159 and 55.8041, with 3 / 1.128 in place of 2.66, which makes them differ by 0.001.
  const auto limits = control_limits({49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1});
  CHECK(limits.centre == Approx(50.81).epsilon(1e-12));
  CHECK(limits.mean_moving_range == Approx(1.8778).margin(5e-5));
  CHECK(limits.low == Approx(45.8159).margin(1.5e-3));
  CHECK(limits.high == Approx(55.8041).margin(1.5e-3));
  CHECK(limits.outside.empty());
}

TEST_CASE("limits from the first visits judge the later ones") {
  const auto limits = control_limits({1, 2, 1, 2, 1, 9, 1, -9}, 5);
  CHECK(limits.centre == Approx(1.4));
  CHECK(limits.mean_moving_range == Approx(1));
  CHECK(limits.high == Approx(4.06));
  CHECK(limits.outside == std::vector<std::size_t>{5, 7});
  // With all of them for a basis the wild ones widen the limits that should have told them.
  CHECK(control_limits({1, 2, 1, 2, 1, 9, 1, -9}).outside.empty());
}

TEST_CASE("limits that cannot be drawn are refused in a sentence") {
  const auto said = [](const std::vector<double>& values, std::optional<std::size_t> from) {
    return sentence_of<GeometryError>([&] { (void)control_limits(values, from); });
  };
  CHECK(said({1}, {}) ==
        "Limits from 1 of 1 visits cannot be drawn; take two visits or more of those there are.");
  CHECK(is_sentence(said({}, {})));
  CHECK(is_sentence(said({1, 2}, 3)));
  CHECK(is_sentence(said({1, 2}, 1)));
  CHECK(said({1, std::nan("")}, {}) == "The measurement of visit 2 is no number; leave the visit out.");
}
