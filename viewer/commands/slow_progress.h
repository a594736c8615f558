#pragma once

#include <chrono>
#include <string>

namespace scalpmark::viewer {

/// Says on stderr what is being done, once the work has taken more than a second, and then once a second or
/// when something new begins.
class SlowProgress {
public:
  /// `fraction` from 0 to 1.
  void operator()(const std::string& what, double fraction);

private:
  using Clock = std::chrono::steady_clock;
  Clock::time_point begun_ = Clock::now(), said_ = begun_;
  std::string last_;
};

}  // namespace scalpmark::viewer
