#include "geometry/head/usual_size.h"

#include <catch2/catch.hpp>
#include <cmath>
#include <random>

#include "geometry/head/scale.h"
#include "tests/support/heads.h"

using namespace scalpmark::geometry;
using namespace scalpmark::tests;
using Eigen::Vector3d;

namespace {

/// Half-ellipses, about as long, broad and high as adults.
const Head& long_egg() {
  static const Head head = [] {
    const Surface ball = sphere(1, 5);
    std::vector<Vector3d> moved = ball.vertices();
    for (auto& v : moved) v = v.cwiseProduct(Vector3d(75, 97, 128));
    return Head(ball.moved(std::move(moved)), {{0, 97, 0}, {0, -97, 0}, {-75, 0, 0}, {75, 0, 0}});
  }();
  return head;
}

// Nasion to inion, tragus to tragus and circumference of adults on average, men and women in one (large
// anthropometric surveys, memory).
const Vector3d usual_tapes(360, 346.5, 567.5);

std::optional<SizeCaution> caution_of(const Vector3d& tapes) {
  return size_caution(long_egg(), {tapes[0], tapes[1], tapes[2]});
}

bool says(const std::optional<SizeCaution>& caution, const std::string& text) {
  return caution && english(caution->sentence).find(text) != std::string::npos;
}

const char* const names[] = {"nasion-inion", "tragus-tragus", "circumference"};

/// "a ... tape of about", as what would put the head right.
bool names_tape(const SizeCaution& caution, int tape) {
  return english(caution.sentence).find(std::string(names[tape]) + " tape of about") != std::string::npos;
}

}  // namespace

TEST_CASE("tapes of a usual head are no caution, nor those of one a little larger or smaller") {
  for (const double by : {0.96, 1.0, 1.04}) CHECK_FALSE(caution_of(by * usual_tapes));
  CHECK_FALSE(size_caution(long_egg(), {}));
  for (const double tape : {-25.0, 25.0}) {
    CHECK_FALSE(size_caution(long_egg(), {usual_tapes[0] + tape, {}, {}}));
    CHECK_FALSE(size_caution(long_egg(), {{}, usual_tapes[1] + tape, usual_tapes[2] + tape}));
  }
}

TEST_CASE("one tape 5 cm off is a caution that names it alone, with what it should read about, either way") {
  for (int tape = 0; tape < 3; ++tape)
    for (const double off_mm : {-50.0, 50.0}) {
      const Vector3d wrong = usual_tapes + off_mm * Vector3d::Unit(tape);
      const auto caution = caution_of(wrong);
      CAPTURE(names[tape], off_mm);
      REQUIRE(caution);
      INFO(english(caution->sentence));
      CHECK(names_tape(*caution, tape));
      CHECK(says(caution, "would fit the other two: measure it again"));
      REQUIRE(caution->again);
      CHECK(static_cast<int>(caution->again->tape) == tape);
      CHECK(*caution->again->about_mm == Approx(usual_tapes[tape]).margin(2));
    }
}

TEST_CASE("what is said of the head goes the way it is off, and a single tape is measured again by itself") {
  CHECK(says(caution_of(usual_tapes - 45 * Vector3d::Unit(1)), "narrower than nearly all adults'"));
  CHECK(says(caution_of(usual_tapes + 45 * Vector3d::Unit(1)), "wider than nearly all adults'"));
  CHECK(says(caution_of(usual_tapes + Vector3d(70, 70, 0)), "higher than nearly all adults'"));
  CHECK(says(caution_of(usual_tapes - Vector3d(70, 60, 0)), "lower than nearly all adults'"));
  const auto one = size_caution(long_egg(), {{}, usual_tapes[1] - 60, {}});
  REQUIRE(one);
  CHECK_THAT(english(one->sentence), Catch::Contains("measure the tragus-tragus tape again"));
  const auto two = size_caution(long_egg(), {usual_tapes[0], usual_tapes[1] - 60, {}});
  REQUIRE(two);
  INFO(english(two->sentence));
  CHECK(says(two, "tragus-tragus tape of about"));
}

namespace {

/// An adult (length, breadth, height of men and women and their spreads by large surveys, memory), the
/// three correlated by 0.3 (memory), whose tapes are to the surveys' mean tapes as on ellipses, and are read
/// by hands that feel for points to 4 mm and read to the half centimetre.
class Adults {
public:
  Vector3d tapes() {
    const bool man = random_() % 2 == 0;
    const Vector3d mean = man ? Vector3d(199, 154, 131) : Vector3d(189, 147, 126);
    const Vector3d sd(7, 5, 6);
    const double shared = std::sqrt(0.3) * normal_(random_);
    Vector3d size;
    for (int k = 0; k < 3; ++k) size[k] = mean[k] + sd[k] * (shared + std::sqrt(0.7) * normal_(random_));
    Vector3d mm = usual_tapes.cwiseProduct(of(size).cwiseQuotient(of({194, 150.5, 128.5})));
    const Vector3d hand(std::sqrt(2 * 16 + 1.4 * 1.4), std::sqrt(2 * 16 + 1.4 * 1.4), 2.5);
    for (int k = 0; k < 3; ++k) mm[k] = 5 * std::round((mm[k] + hand[k] * normal_(random_)) / 5);
    return mm;
  }
  int pick(int count) { return static_cast<int>(random_() % static_cast<unsigned>(count)); }

private:
  /// Half of an ellipse by its length and height, and so on, by Simpson's rule on the arc.
  static double around(double a, double b) {
    constexpr int steps = 200;
    double sum = 0;
    for (int i = 0; i <= steps; ++i) {
      const double t = M_PI / 2 * i / steps;
      sum += (i == 0 || i == steps ? 1 : i % 2 == 1 ? 4 : 2) * std::hypot(a * std::sin(t), b * std::cos(t));
    }
    return 4 * sum * M_PI / 2 / steps / 3;
  }
  static Vector3d of(const Vector3d& size) {
    return {around(size[0] / 2, size[2]) / 2, around(size[1] / 2, size[2]) / 2,
            around(size[0] / 2, size[1] / 2)};
  }
  std::mt19937 random_{20261127};
  std::normal_distribution<double> normal_;
};

}  // namespace

// What usual_size.h claims. 4000 people know a share of 3 % to 0.3 % (one standard deviation).
TEST_CASE("few honest tapes draw a caution, and a slip of 5 cm is mostly named and hardly ever wrongly",
          "[slow]") {
  Adults adults;
  constexpr int people = 4000;
  int honest = 0;
  for (int i = 0; i < people; ++i) honest += caution_of(adults.tapes()).has_value();
  int right = 0, among = 0, wrong = 0, all = 0, silent = 0;
  for (int i = 0; i < people; ++i) {
    Vector3d mm = adults.tapes();
    const int tape = adults.pick(3);
    mm[tape] += adults.pick(2) == 0 ? 50 : -50;
    const auto caution = caution_of(mm);
    if (!caution) {
      ++silent;
    } else if (!caution->again) {
      ++all;
    } else {
      int named = 0;
      for (int k = 0; k < 3; ++k) named += names_tape(*caution, k);
      const bool is_named = names_tape(*caution, tape);
      right += is_named && named == 1;
      among += is_named && named > 1;
      wrong += !is_named;
    }
  }
  WARN("of " << people << " honest people " << honest << " are cautioned; of as many slips " << right
             << " are named, " << among << " with another, " << all << " as any, " << wrong << " wrongly, "
             << silent << " not at all");
  CHECK(honest < 0.05 * people);
  CHECK(right > 0.77 * people);
  CHECK(wrong < 0.015 * people);
  CHECK(silent < 0.18 * people);
}
