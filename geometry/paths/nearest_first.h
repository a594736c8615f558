#pragma once

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>
#include <queue>
#include <vector>

namespace scalpmark::geometry {

/// Things waiting at distances, given out nearest first to within a step: a ring of slots, each a step wide,
/// and a heap for what lies further ahead than the ring is long. Putting in and taking out cost the same
/// however many wait in the ring, where a heap's cost grows with their number. What is put in nearer than
/// what was last given out comes next. Internal to window_spread.cpp.
template <class T>
class NearestFirst {
public:
  struct Waiting {
    double mm;
    T what;
    bool operator<(const Waiting& o) const { return mm > o.mm; }  // the nearest on the heap's top
  };

  /// Any width over 0 is right; a part of what one thing leads on from the last is quick.
  explicit NearestFirst(double step_mm) : step_mm_(step_mm) {}

  void put(double mm, const T& what) {
    const double slot = ahead(mm);
    if (slot >= slots)
      beyond_.push({mm, what});
    else
      put_into(slot, {mm, what});
  }
  [[nodiscard]] bool empty() const { return in_ring_ == 0 && beyond_.empty(); }
  /// Of what waits; not to be called when nothing does.
  Waiting take() {
    if (in_ring_ == 0) {
      const Waiting next = beyond_.top();
      beyond_.pop();
      // A double counts no further one by one, and no path is as long.
      constexpr double farthest = 1e15;
      turn_ = std::floor(std::min(next.mm / step_mm_, farthest));
      bring_in();
      return next;
    }
    while (here().empty()) {
      ++turn_;
      bring_in();
    }
    const Waiting next = here().back();
    here().pop_back();
    --in_ring_;
    return next;
  }

private:
  static constexpr std::size_t slots = 64;

  [[nodiscard]] double ahead(double mm) const { return mm / step_mm_ - turn_; }
  [[nodiscard]] std::vector<Waiting>& here() { return ring_[static_cast<std::size_t>(turn_) % slots]; }
  void put_into(double slot, const Waiting& item) {
    const double from_now = slot > 0 ? slot : 0;
    ring_[(static_cast<std::size_t>(turn_) + static_cast<std::size_t>(from_now)) % slots].push_back(item);
    ++in_ring_;
  }
  void bring_in() {
    while (!beyond_.empty() && ahead(beyond_.top().mm) < slots) {
      put_into(ahead(beyond_.top().mm), beyond_.top());
      beyond_.pop();
    }
  }

  double step_mm_;
  double turn_ = 0;  ///< of the slot being emptied, counted on round after round; whole
  std::size_t in_ring_ = 0;
  std::array<std::vector<Waiting>, slots> ring_;
  std::priority_queue<Waiting> beyond_;
};

}  // namespace scalpmark::geometry
