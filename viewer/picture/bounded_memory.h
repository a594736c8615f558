#pragma once

#include <string>

namespace scalpmark::viewer {

/// While it lives, and where this run's memory is bounded (ulimit -v), a graphics driver that falls over for
/// want of memory ends the program with one sentence on stderr and exit code 1. Drivers abort rather than say
/// that there was none. At most one at a time.
class BoundedMemory {
public:
  /// `what` is drawn: "a picture".
  explicit BoundedMemory(const std::string& what);
  ~BoundedMemory();
  BoundedMemory(const BoundedMemory&) = delete;
  BoundedMemory& operator=(const BoundedMemory&) = delete;

private:
  bool watching_ = false;
};

}  // namespace scalpmark::viewer
