#include "models/mri/dark_and_bright.h"

#include <algorithm>
#include <cmath>

namespace scalpmark::models {

std::optional<DarkAndBright> dark_and_bright(const Volume& scan) {
  constexpr std::size_t bins = 1024;
  std::vector<float> sample;
  const std::size_t stride = std::max<std::size_t>(1, scan.value.size() / 500000);
  for (std::size_t v = 0; v < scan.value.size(); v += stride) sample.push_back(scan.value[v]);
  const auto percentile = [&](double p) {
    const auto n = sample.begin() + static_cast<std::ptrdiff_t>(p * static_cast<double>(sample.size() - 1));
    std::nth_element(sample.begin(), n, sample.end());
    return *n;
  };
  const double low = static_cast<double>(percentile(0.001)), high = static_cast<double>(percentile(0.998));
  if (!(high > low)) return {};
  std::vector<double> histogram(bins, 0);
  for (const float s : sample) {
    const double f = std::clamp((static_cast<double>(s) - low) / (high - low), 0.0, 1.0);
    ++histogram[static_cast<std::size_t>(std::lround(f * (bins - 1)))];
  }
  double all = 0, all_sum = 0;
  for (std::size_t b = 0; b < bins; ++b) {
    all += histogram[b];
    all_sum += histogram[b] * static_cast<double>(b);
  }
  double dark = 0, dark_sum = 0, best = -1;
  std::size_t best_bin = 0;
  for (std::size_t b = 0; b + 1 < bins; ++b) {
    dark += histogram[b];
    dark_sum += histogram[b] * static_cast<double>(b);
    if (dark == 0 || dark == all) continue;
    const double gap = dark_sum / dark - (all_sum - dark_sum) / (all - dark);
    const double between = dark * (all - dark) * gap * gap;
    if (between > best) {
      best = between;
      best_bin = b;
    }
  }
  double seen = 0, under = 0;
  std::size_t median_bin = 0;
  for (std::size_t b = 0; b <= best_bin; ++b) under += histogram[b];
  while (seen + histogram[median_bin] < under / 2) seen += histogram[median_bin++];
  const auto intensity = [&](double bin) {
    return static_cast<float>(low + (high - low) * bin / (bins - 1));
  };
  return DarkAndBright{intensity(static_cast<double>(median_bin)),
                       intensity(static_cast<double>(best_bin) + 0.5)};
}

}  // namespace scalpmark::models
