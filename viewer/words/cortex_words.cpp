#include "viewer/words/cortex_words.h"

#include <algorithm>
#include <cmath>

#include "viewer/words/data_words.h"
#include "viewer/words/numbers.h"
#include "viewer/words/words.h"

namespace scalpmark::viewer {

namespace {

/// From this share of the sphere on, a region is most of it.
constexpr double most = 0.75;
/// A second region under this share is not worth a word.
constexpr double worth_saying = 0.15;

/// The second name without the words it begins with alike.
std::string without_shared_words(const std::string& first, const std::string& second) {
  size_t from = 0;
  for (size_t i = 0; i < std::min(first.size(), second.size()) && first[i] == second[i]; ++i)
    if (first[i] == ' ') from = i + 1;
  return second.substr(from);
}

}  // namespace

std::string depth_in_words(const geometry::CortexHit& hit) {
  const long nearest = std::lround(hit.nearest_mm), middle = std::max(nearest, std::lround(hit.median_mm));
  std::string low = rough_number(static_cast<double>(nearest)),
              high = rough_length(static_cast<double>(middle));
  if (nearest == middle) return high;
  if (low == rough_number(static_cast<double>(middle))) return high;  // alike as written: in inches
  return words(Words::tr("%1 to %2", "a depth"), {low, high});
}

std::string regions_in_words(const std::vector<geometry::RegionShare>& shares) {
  if (shares.empty()) return words(Words::tr("no named region"));
  const std::string first = region_text(shares[0].name);
  if (shares[0].share >= most) return words(Words::tr("mostly %1", "a region of the brain"), {first});
  if (shares.size() < 2 || shares[1].share < worth_saying)
    return words(Words::tr("%1 and others", "a region of the brain"), {first});
  return words(Words::tr("%1, some %2", "two regions of the brain"),
               {first, without_shared_words(first, region_text(shares[1].name))});
}

}  // namespace scalpmark::viewer
