#pragma once

#include <Eigen/Core>
#include <cstddef>
#include <optional>
#include <vector>

namespace scalpmark::geometry {

/// From some visit on, the pulses lie elsewhere.
struct Drift {
  std::size_t before = 0;                              ///< visits before the change; the rest come after it
  Eigen::Vector2d moved_mm = Eigen::Vector2d::Zero();  ///< mean of those after less mean of those before
  Eigen::Vector2d se_mm = Eigen::Vector2d::Zero();     ///< one standard deviation of it, along each axis
  double chance = 1;  ///< of a change as clear or clearer where nothing changed
};

/// Of every course in which nothing changed, this share is called a drift by one look at its visits.
inline constexpr double drift_error_rate = 0.01;

/// Fewer visits than these can show no change at that error rate: of the 70 ways to part eight visits in two
/// halves, two part them as well as any can.
inline constexpr std::size_t fewest_visits_for_drift = 10;

/// The most likely change of place in a series of visits' offsets (two axes in one unit, mm), three visits or
/// more on either side of it. For each split k of n visits, k (n - k) / n times the squared distance of the
/// two means; the chance is the share of 9999 shuffled orders of the same visits whose best split does as
/// well (a permutation test: exact where visits may be exchanged, with no Gaussian asked for; the shuffles
/// are always the same). A slow creep is found as a change half way. Since the split was chosen, `moved_mm`
/// is a little too large on average. An angle is tested with its second axis at 0. None with fewer than eight
/// visits. Refuses (GeometryError) over 1000 visits and places that are no numbers.
[[nodiscard]] std::optional<Drift> likeliest_change(const std::vector<Eigen::Vector2d>& offsets_mm);

/// The same where its chance is at most drift_error_rate; else none. One look errs in at most 1 course of 100
/// in which nothing changed. Asked anew after every visit of a course of thirty, about 8 of 100 such courses
/// are called a drift at some visit: see the test, and look again at the next visit before marking anew.
[[nodiscard]] std::optional<Drift> find_drift(const std::vector<Eigen::Vector2d>& offsets_mm);

}  // namespace scalpmark::geometry
