#include "geometry/answers/drift.h"

#include <cmath>
#include <cstdint>
#include <random>
#include <utility>

#include "geometry/base/error.h"

namespace scalpmark::geometry {

namespace {

using Eigen::Vector2d;

constexpr std::size_t fewest_on_a_side = 3;

/// The best place to cut a series in two.
struct Split {
  std::size_t before = 0;
  double apart_mm2 = 0;
};

/// `places` lie about their mean.
Split best_split(const std::vector<Vector2d>& places) {
  const std::size_t n = places.size();
  Split best{fewest_on_a_side, -1};
  Vector2d sum(0, 0);
  for (std::size_t k = 1; k + fewest_on_a_side <= n; ++k) {
    sum += places[k - 1];
    if (k < fewest_on_a_side) continue;
    // The sums of both sides cancel, so this is k (n - k) / n |mean - mean|^2.
    const double apart = sum.squaredNorm() * static_cast<double>(n) / static_cast<double>(k * (n - k));
    if (apart > best.apart_mm2) best = {k, apart};
  }
  return best;
}

Vector2d mean_of_places(const std::vector<Vector2d>& places, std::size_t from, std::size_t to) {
  Vector2d sum(0, 0);
  for (std::size_t i = from; i < to; ++i) sum += places[i];
  return sum / static_cast<double>(to - from);
}

/// Fisher and Yates's, with the same outcome on every computer; the tiny bias of the remainder is under
/// 1e-16.
void shuffle_places(std::vector<Vector2d>& places, std::mt19937_64& random) {
  for (std::size_t i = places.size(); i > 1; --i) std::swap(places[i - 1], places[random() % i]);
}

double chance_of_split(std::vector<Vector2d> places, double apart_mm2) {
  constexpr int shuffles = 9999;
  constexpr double rounding = 1e-9;  // of a sum in another order, as a share of it
  std::mt19937_64 random(20);
  int as_well = 1;  // the order that was seen is one of them
  for (int i = 0; i < shuffles; ++i) {
    shuffle_places(places, random);
    if (best_split(places).apart_mm2 >= apart_mm2 * (1 - rounding)) ++as_well;
  }
  return as_well / (shuffles + 1.0);
}

}  // namespace

std::optional<Drift> likeliest_change(const std::vector<Vector2d>& offsets_mm) {
  constexpr std::size_t most = 1000;
  const std::size_t n = offsets_mm.size();
  if (n > most)
    throw GeometryError(Message::of("There are %1 visits, more than %2; leave some out.", n, most));
  for (std::size_t i = 0; i < n; ++i)
    if (!offsets_mm[i].allFinite())
      throw GeometryError(Message::of("The place of visit %1 is no number; leave the visit out.", i + 1));
  if (n < fewest_visits_for_drift) return {};
  std::vector<Vector2d> places = offsets_mm;
  const Vector2d mean = mean_of_places(offsets_mm, 0, n);
  for (Vector2d& place : places) place -= mean;
  const Split split = best_split(places);
  const std::size_t k = split.before;
  const Vector2d before = mean_of_places(places, 0, k), after = mean_of_places(places, k, n);
  Eigen::Array2d scatter(0, 0);
  for (std::size_t i = 0; i < n; ++i) scatter += (places[i] - (i < k ? before : after)).array().square();
  Drift drift;
  drift.before = k;
  drift.moved_mm = after - before;
  drift.se_mm =
      (scatter / static_cast<double>(n - 2) * static_cast<double>(n) / static_cast<double>(k * (n - k)))
          .sqrt()
          .matrix();
  drift.chance = chance_of_split(std::move(places), split.apart_mm2);
  return drift;
}

std::optional<Drift> find_drift(const std::vector<Vector2d>& offsets_mm) {
  auto drift = likeliest_change(offsets_mm);
  if (!drift || drift->chance > drift_error_rate) return {};
  return drift;
}

}  // namespace scalpmark::geometry
