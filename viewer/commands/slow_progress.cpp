#include "viewer/commands/slow_progress.h"

#include <algorithm>
#include <cmath>
#include <iostream>

namespace scalpmark::viewer {

namespace {

constexpr std::chrono::seconds patience{1};

}  // namespace

void SlowProgress::operator()(const geometry::Message& what, double fraction) {
  const auto now = Clock::now();
  if (now - begun_ < patience) return;
  if (what == last_ && now - said_ < patience) return;
  said_ = now;
  last_ = what;
  const double share = std::isfinite(fraction) ? std::clamp(fraction, 0.0, 1.0) : 0.0;
  std::cerr << english(what) << ": " << std::lround(100 * share) << " %\n";
}

}  // namespace scalpmark::viewer
