#pragma once

#include <chrono>

#include "geometry/base/message.h"

namespace scalpmark::viewer {

/// Says on stderr what is being done, once the work has taken more than a second, and then once a second or
/// when something new begins.
class SlowProgress {
public:
  /// `fraction` from 0 to 1.
  void operator()(const geometry::Message& what, double fraction);

private:
  using Clock = std::chrono::steady_clock;
  Clock::time_point begun_ = Clock::now(), said_ = begun_;
  geometry::Message last_;
};

}  // namespace scalpmark::viewer
