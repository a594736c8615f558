#pragma once

#include <algorithm>
#include <array>
#include <cstddef>
#include <vector>

namespace scalpmark::geometry {

/// Things waiting at distances, given out nearest first to within a step: a ring of slots, each a step wide.
/// Putting in and taking out cost the same however many wait, where a heap's cost grows with their number.
/// What is put in nearer than what was last given out comes next; what lies further ahead than the ring is
/// long waits in its last slot, and so may come early. Internal to window_spread.cpp.
template <class T>
class NearestFirst {
public:
  struct Waiting {
    double mm;
    T what;
  };

  /// Any width over 0 is right; a part of what one thing leads on from the last is quick.
  explicit NearestFirst(double step_mm) : step_mm_(step_mm) {}

  void put(double mm, const T& what) {
    const double ahead = mm / step_mm_ - static_cast<double>(turn_);
    const std::size_t slot = ahead > 0 ? static_cast<std::size_t>(std::min(ahead, slots - 1.0)) : 0;
    ring_[(turn_ + slot) % slots].push_back({mm, what});
    ++count_;
  }
  [[nodiscard]] bool empty() const { return count_ == 0; }
  /// Of what waits; not to be called when nothing does.
  Waiting take() {
    while (ring_[turn_ % slots].empty()) ++turn_;
    auto& slot = ring_[turn_ % slots];
    const Waiting next = slot.back();
    slot.pop_back();
    --count_;
    return next;
  }

private:
  static constexpr std::size_t slots = 64;
  double step_mm_;
  std::size_t turn_ = 0;  ///< of the slot being emptied, counted on round after round
  std::size_t count_ = 0;
  std::array<std::vector<Waiting>, slots> ring_;
};

}  // namespace scalpmark::geometry
