#pragma once

#include <algorithm>
#include <atomic>
#include <future>
#include <thread>
#include <vector>

namespace scalpmark::geometry {

/// Calls work(i) for i from 0 to count - 1, on `threads` threads (0: one for each core), in no given order.
/// The first exception thrown is thrown on, after all threads have stopped.
template <typename Work>
void for_each_index(int count, int threads, const Work& work) {
  if (threads <= 0) threads = static_cast<int>(std::max(1U, std::thread::hardware_concurrency()));
  std::atomic<int> next{0};
  const auto run = [&] {
    try {
      for (int i = next++; i < count; i = next++) work(i);
    } catch (...) {
      next = count;
      throw;
    }
  };
  std::vector<std::future<void>> others;
  for (int i = 1; i < std::min(threads, count); ++i) others.push_back(std::async(std::launch::async, run));
  std::exception_ptr failed;
  const auto keep = [&](const auto& doing) {
    try {
      doing();
    } catch (...) {
      if (!failed) failed = std::current_exception();
    }
  };
  keep(run);
  for (auto& other : others) keep([&] { other.get(); });
  if (failed) std::rethrow_exception(failed);
}

}  // namespace scalpmark::geometry
