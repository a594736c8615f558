#pragma once

#include <boost/pending/disjoint_sets.hpp>
#include <cstddef>

namespace scalpmark::models {

/// Numbers from 0 in sets that are joined two by two: boost's, asked with a mesh's own kind of number.
class DisjointSets {
public:
  explicit DisjointSets(std::size_t count) : sets_(count) {}
  /// The number that stands for i's set.
  int of(int i) { return static_cast<int>(sets_.find_set(static_cast<std::size_t>(i))); }
  void join(int a, int b) { sets_.union_set(static_cast<std::size_t>(a), static_cast<std::size_t>(b)); }

private:
  boost::disjoint_sets_with_storage<> sets_;
};

}  // namespace scalpmark::models
