#pragma once

#include <algorithm>
#include <atomic>
#include <cstddef>
#include <future>
#include <system_error>
#include <thread>
#include <vector>

namespace scalpmark::geometry {

/// Calls `work(i)` for every i below `count`, on no more threads than there are cores (or on `threads`, if
/// that is not 0) and as the system gives, this one among them. What a call throws is thrown here once all
/// threads have ended.
template <class Work>
void on_all_cores(size_t count, const Work& work, int threads = 0) {
  std::atomic<size_t> next{0};
  const auto take = [&] {
    for (size_t i = next++; i < count; i = next++) work(i);
  };
  const size_t cores =
      threads > 0 ? static_cast<size_t>(threads) : std::max(1U, std::thread::hardware_concurrency());
  std::vector<std::future<void>> others;
  try {
    for (size_t i = 1; i < std::min(count, cores); ++i)
      others.push_back(std::async(std::launch::async, take));
  } catch (const std::system_error&) {
    // The system gives no more threads: those there are do it all.
  }
  take();
  for (auto& other : others) other.get();
}

}  // namespace scalpmark::geometry
