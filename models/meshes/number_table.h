#pragma once

#include <array>
#include <bit>
#include <cstddef>
#include <cstdint>
#include <vector>

namespace scalpmark::models {

/// Numbers under keys of three whole numbers (a place's cell, a triangle's corners): a hash table that is
/// only added to, in two pieces of memory. DEVELOPERS says what it was measured against.
class NumberTable {
public:
  using Key = std::array<std::int64_t, 3>;

  explicit NumberTable(std::size_t count) : first_(std::bit_ceil(2 * count + 1), -1) {
    entries_.reserve(count);
  }

  void add(const Key& key, int number) {
    int& first = first_[slot(key)];
    entries_.push_back({key, number, first});
    first = static_cast<int>(entries_.size() - 1);
  }
  /// The number last added under the key that `fits`, or -1.
  template <class Fits>
  [[nodiscard]] int find(const Key& key, const Fits& fits) const {
    for (int i = first_[slot(key)]; i >= 0; i = entries_[static_cast<std::size_t>(i)].next)
      if (const Entry& entry = entries_[static_cast<std::size_t>(i)]; entry.key == key && fits(entry.number))
        return entry.number;
    return -1;
  }
  [[nodiscard]] int find(const Key& key) const {
    return find(key, [](int) { return true; });
  }

private:
  struct Entry {
    Key key;
    int number, next;
  };
  [[nodiscard]] std::size_t slot(const Key& key) const {
    std::uint64_t h = 0;
    for (const std::int64_t p : key) {
      h ^= static_cast<std::uint64_t>(p) + 0x9e3779b97f4a7c15ULL + (h << 6U) + (h >> 2U);
      h *= 0xff51afd7ed558ccdULL;
      h ^= h >> 33U;
    }
    return static_cast<std::size_t>(h) & (first_.size() - 1);
  }

  std::vector<int> first_;  // entry by slot
  std::vector<Entry> entries_;
};

}  // namespace scalpmark::models
