#pragma once

#include <cstddef>
#include <numeric>
#include <vector>

namespace scalpmark::models {

/// Numbers from 0 in sets that are joined two by two (union-find, paths halved). DEVELOPERS says what it was
/// measured against.
class DisjointSets {
public:
  explicit DisjointSets(std::size_t count) : up_(count) { std::iota(up_.begin(), up_.end(), 0); }
  /// The number that stands for i's set.
  int of(int i) {
    while (up_[at(i)] != i) i = up_[at(i)] = up_[at(up_[at(i)])];
    return i;
  }
  void join(int a, int b) { up_[at(of(a))] = of(b); }

private:
  static std::size_t at(int i) { return static_cast<std::size_t>(i); }

  std::vector<int> up_;
};

}  // namespace scalpmark::models
