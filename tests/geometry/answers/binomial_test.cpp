#include "geometry/answers/binomial.h"

#include <catch2/catch.hpp>
#include <cmath>

#include "geometry/base/error.h"
#include "tests/support/sentence.h"

using namespace scalpmark::geometry;
using namespace scalpmark::tests;

TEST_CASE("an output that answers two times in five meets five of ten in 37 of 100") {
  // By hand: 1 - (0.6^10 + 10 0.4 0.6^9 + 45 0.4^2 0.6^8 + 120 0.4^3 0.6^7 + 210 0.4^4 0.6^6)
  // = 1 - (60466176 + 403107840 + 1209323520 + 2149908480 + 2508226560) / 10^10.
  CHECK(chance_of_meeting(five_of_ten, 0.4) == Approx(0.3668967424).epsilon(1e-12));
  // 1 - (6561 + 8 4374 + 28 2916 + 56 1944) / 10^... in sixty-fourths: (3/5)^8 and so on, 390625 ways of 5^8.
  CHECK(chance_of_meeting(four_of_eight, 0.4) ==
        Approx(1 - (6561 + 8 * 2187 * 2 + 28 * 729 * 4 + 56 * 243 * 8) / 390625.0).epsilon(1e-12));
}

TEST_CASE("at the threshold itself a rule is met more often than not") {
  // Half of the 2^10, and half of the middle term: (1024 + 252) / 2048; for eight (256 + 70) / 512.
  CHECK(chance_of_meeting(five_of_ten, 0.5) == Approx(638.0 / 1024).epsilon(1e-13));
  CHECK(chance_of_meeting(four_of_eight, 0.5) == Approx(163.0 / 256).epsilon(1e-13));
}

TEST_CASE("tails have their closed forms") {
  for (const double p : {1e-9, 0.03, 0.5, 0.97})
    for (const int n : {1, 7, 60, 900}) {
      CHECK(at_least(1, n, p) == Approx(-std::expm1(n * std::log1p(-p))).epsilon(1e-12));
      CHECK(at_least(n, n, p) == Approx(std::pow(p, n)).epsilon(1e-12));
      CHECK(at_least(0, n, p) == 1);
      CHECK(at_least(n + 1, n, p) == 0);
    }
  CHECK(at_least(1, 5, 0) == 0);
  CHECK(at_least(5, 5, 1) == 1);
  CHECK(exactly(0, 5, 0) == 1);
  CHECK(exactly(5, 5, 1) == 1);
  CHECK(exactly(4, 5, 1) == 0);
  CHECK(exactly(-1, 5, 0.5) == 0);
}

TEST_CASE("a tail is the sum of its terms, and with the other tail it is one") {
  for (const double p : {0.1, 0.4, 0.8})
    for (const int n : {10, 200}) {
      double sum = 0;
      for (int k = n; k >= 0; --k) {
        sum += exactly(k, n, p);
        CAPTURE(n, k, p);
        CHECK(at_least(k, n, p) == Approx(sum).epsilon(1e-11));
        CHECK(at_least(k, n, p) + at_least(n - k + 1, n, 1 - p) == Approx(1).epsilon(1e-12));
      }
    }
}

TEST_CASE("thousands of pulses neither overflow nor vanish") {
  // Half and half of 100000: the middle term is sqrt(2 / (pi n)) but for 1 / (4 n) of it (Stirling).
  const int n = 100000;
  CHECK(exactly(n / 2, n, 0.5) == Approx(std::sqrt(2 / (M_PI * n)) * (1 - 0.25 / n)).epsilon(1e-9));
  CHECK(at_least(n / 2, n, 0.5) == Approx(0.5 + 0.5 * exactly(n / 2, n, 0.5)).epsilon(1e-10));
}

TEST_CASE("chances and rules that are none are refused in a sentence") {
  const auto said = [](auto action) { return sentence_of<GeometryError>(action); };
  CHECK(said([] { (void)at_least(1, 2, 1.5); }) ==
        "The chance of an answer is 1.5; it must be from 0 to 1; correct it.");
  CHECK(is_sentence(said([] { (void)exactly(1, 2, std::nan("")); })));
  CHECK(is_sentence(said([] { (void)at_least(1, -1, 0.5); })));
  CHECK(
      said([] {
        (void)chance_of_meeting({6, 5}, 0.5);
      }) ==
      "A threshold's rule of 6 of 5 cannot be counted; take 5 of 10, 4 of 8 or another of up to 100 pulses.");
  CHECK(is_sentence(said([] { (void)chance_of_meeting({0, 5}, 0.5); })));
  CHECK(is_sentence(said([] { (void)chance_of_meeting({5, 101}, 0.5); })));
}
