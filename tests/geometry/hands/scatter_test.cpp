#include "geometry/hands/scatter.h"

#include <Eigen/Dense>
#include <catch2/catch.hpp>
#include <cmath>
#include <random>

using namespace scalpmark::geometry;
using Eigen::Matrix2d;
using Eigen::Vector2d;

namespace {

Scatter round_or_not(double first_sd, double second_sd) {
  return {Vector2d(first_sd * first_sd, second_sd * second_sd).asDiagonal().toDenseMatrix(), {{}}};
}

Scatter three_rules() {
  Scatter s = round_or_not(3, 1);
  s.clusters = {{0.8, {0, 0}}, {0.1, {-8, 2}}, {0.1, {9, -3}}};
  return s;
}

std::vector<Vector2d> drawn(const Scatter& s, int count, unsigned seed) {
  std::mt19937 random(seed);
  std::normal_distribution<double> normal;
  std::uniform_real_distribution<double> even(0, 1);
  const Matrix2d root = Eigen::SelfAdjointEigenSolver<Matrix2d>(s.covariance).operatorSqrt();
  std::vector<Vector2d> points;
  for (int i = 0; i < count; ++i) {
    double left = even(random);
    size_t k = 0;
    while (k + 1 < s.clusters.size() && left > s.clusters[k].share) left -= s.clusters[k++].share;
    const double a = normal(random), b = normal(random);
    points.emplace_back(s.clusters[k].middle + root * Vector2d(a, b));
  }
  return points;
}

double share_of(const std::vector<Vector2d>& points, const EllipseForm& e) {
  const Matrix2d inverse = e.shape.inverse();
  int inside = 0;
  for (const auto& p : points)
    if ((p - e.centre).dot(inverse * (p - e.centre)) <= e.size) ++inside;
  return inside / static_cast<double>(points.size());
}

}  // namespace

TEST_CASE("the average distance of a flat scatter: Rayleigh when round, half-normal when on a line") {
  // Means of the Rayleigh and of the half-normal distribution: sd sqrt(pi / 2), sd sqrt(2 / pi) (any textbook
  // of statistics); between them sqrt(2 / pi) times the larger deviation times the complete elliptic integral
  // of the second kind (the integral of the distance, in polar coordinates).
  CHECK(mean_distance(round_or_not(3, 3)) == Approx(3 * std::sqrt(M_PI / 2)).epsilon(1e-6));
  CHECK(mean_distance(round_or_not(3, 0)) == Approx(3 * std::sqrt(2 / M_PI)).epsilon(1e-4));
  CHECK(mean_distance(round_or_not(5, 2)) ==
        Approx(std::sqrt(2 / M_PI) * 5 * std::comp_ellint_2(std::sqrt(1 - 4.0 / 25))).epsilon(1e-6));
  CHECK(mean_distance(Scatter{}) == 0);
}

TEST_CASE("the average distance of a round scatter that is off: the Rice distribution's mean") {
  // sd sqrt(pi / 2) L(-m2 / (2 sd2)), L(x) = exp(x / 2) ((1 - x) I0(-x / 2) - x I1(-x / 2)) (Rice 1945; any
  // textbook).
  Scatter s = round_or_not(2, 2);
  s.clusters[0].middle = {3, -4};
  const double x = -25 / (2 * 4.0);
  const double laguerre =
      std::exp(x / 2) * ((1 - x) * std::cyl_bessel_i(0, -x / 2) - x * std::cyl_bessel_i(1, -x / 2));
  CHECK(mean_distance(s) == Approx(2 * std::sqrt(M_PI / 2) * laguerre).epsilon(1e-6));
}

TEST_CASE("a mixture is no normal scatter: one in ten placements off by 8 mm is 0.8 mm on average") {
  Scatter s;
  s.clusters = {{0.9, {0, 0}}, {0.05, {8, 0}}, {0.05, {0, -8}}};
  CHECK(mean_distance(s) == Approx(0.8).epsilon(1e-4));
  CHECK(mean_square(s) == Approx(6.4));
  // A normal scatter of the same mean square would be told 2.2 mm.
  CHECK(mean_distance({Matrix2d(3.2 * Matrix2d::Identity()), {{}}}) > 2);
  CHECK(mean_of(s).isApprox(Vector2d(0.4, -0.4)));
  CHECK(covariance_of(s).trace() == Approx(6.4 - 0.32));
}

TEST_CASE("a mixture's mean, spread and average distance are those of points drawn from it") {
  const Scatter s = three_rules();
  const auto points = drawn(s, 200000, 4);
  Vector2d mean(0, 0);
  double distance = 0, square = 0;
  for (const auto& p : points) {
    mean += p / 200000;
    distance += p.norm() / 200000;
    square += p.squaredNorm() / 200000;
  }
  CHECK((mean - mean_of(s)).norm() < 0.03);
  CHECK(mean_distance(s) == Approx(distance).epsilon(0.01));
  CHECK(mean_square(s) == Approx(square).epsilon(0.01));
}

TEST_CASE("a region holds its share of a round scatter, of one on a line, and of all between") {
  // Round: chi-square with two degrees of freedom, -2 ln(1 - p). On a line: with one, 0.67449 and 1.95996
  // standard deviations either way (tables).
  const EllipseForm round = region_holding(0.5, round_or_not(10, 10));
  CHECK(std::sqrt(round.size * round.shape(0, 0)) ==
        Approx(10 * std::sqrt(2 * std::log(2.0))).epsilon(0.002));
  const EllipseForm line = region_holding(0.5, round_or_not(10, 0));
  CHECK(std::sqrt(line.size * line.shape(0, 0)) == Approx(6.7449).epsilon(0.005));
  const EllipseForm most = region_holding(0.95, round_or_not(10, 1e-6));
  CHECK(std::sqrt(most.size * most.shape(0, 0)) == Approx(19.5996).epsilon(0.005));
  for (const double second : {0.0, 0.01, 0.1, 0.3, 1.0, 5.0, 10.0})
    for (const double share : {0.5, 0.95}) {
      INFO(second << " mm, " << share);
      const Scatter s = round_or_not(10, second);
      // 100000 points know a half to 0.16 %.
      CHECK(share_of(drawn(s, 100000, 7), region_holding(share, s)) == Approx(share).margin(0.006));
    }
}

TEST_CASE("a region holds its share of a mixture, and of nothing that scatters nothing") {
  const Scatter s = three_rules();
  for (const double share : {0.5, 0.95})
    CHECK(share_of(drawn(s, 100000, 8), region_holding(share, s)) == Approx(share).margin(0.006));
  CHECK(region_holding(0.95, Scatter{}).size == 0);
}

TEST_CASE("a region made from points holds its share of others from the same scatter") {
  for (const double second : {0.0, 0.1, 6.0}) {
    const Scatter s = round_or_not(10, second);
    for (const double share : {0.5, 0.95})
      CHECK(share_of(drawn(s, 40000, 2), region_holding(share, drawn(s, 40000, 1))) ==
            Approx(share).margin(0.015));
  }
}
