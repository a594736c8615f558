#include "geometry/answers/gauss_legendre.h"

#include <catch2/catch.hpp>
#include <cmath>

using namespace scalpmark::geometry;

TEST_CASE("two and three nodes are the textbook's") {
  // Closed forms on -1 to 1: +-1/sqrt(3), weights 1; 0 and +-sqrt(3/5), weights 8/9 and 5/9.
  const auto two = gauss_legendre(2), three = gauss_legendre(3);
  CHECK(two[0].at == Approx(0.5 - 0.5 / std::sqrt(3)).epsilon(1e-14));
  CHECK(two[1].weight == Approx(0.5).epsilon(1e-14));
  CHECK(three[0].at == Approx(0.5 - 0.5 * std::sqrt(0.6)).epsilon(1e-14));
  CHECK(three[1].at == Approx(0.5).epsilon(1e-14));
  CHECK(three[0].weight == Approx(5.0 / 18).epsilon(1e-14));
  CHECK(three[1].weight == Approx(4.0 / 9).epsilon(1e-14));
}

TEST_CASE("a rule of n nodes integrates every power up to 2 n - 1, and no further") {
  for (const int n : {1, 2, 9, 40, 512}) {
    const auto integral = [&](int power) {
      double sum = 0;
      for (const auto& node : gauss_legendre(n)) sum += node.weight * std::pow(node.at, power);
      return sum;
    };
    CAPTURE(n);
    for (const int power : {0, 1, n, 2 * n - 1})
      CHECK(integral(power) == Approx(1.0 / (power + 1)).epsilon(1e-12));
    if (n < 10) CHECK(std::abs(integral(2 * n) * (2 * n + 1) - 1) > 1e-13);
  }
}
