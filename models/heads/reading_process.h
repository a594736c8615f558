#pragma once

#include <cstddef>
#include <cstdint>
#include <filesystem>
#include <optional>
#include <string>
#include <vector>

namespace scalpmark::models {

// All that reading a file apart (skin_reading.h) asks of the operating system: what a port to another has to
// write anew.

/// A program started apart, whose answers are read here; what else it prints goes nowhere. Ended when this
/// goes.
class ReadingProcess {
public:
  /// `words`: what it is called with, its own name first. Refuses (ModelError) when it does not start.
  ReadingProcess(const std::filesystem::path& program, std::vector<std::string> words);
  ~ReadingProcess();
  ReadingProcess(const ReadingProcess&) = delete;
  ReadingProcess& operator=(const ReadingProcess&) = delete;

  /// Waits for the next bytes. False at the end of what it says, and when it is silent for too long.
  [[nodiscard]] bool take(void* bytes, std::size_t count, int silent_seconds);
  /// It was silent for too long.
  [[nodiscard]] bool stuck() const { return stuck_; }
  /// Whether it was ended for going over its limits, asked once what it says has broken off.
  [[nodiscard]] bool went_over_limits();

private:
  int from_ = -1;
  int child_ = -1;
  bool stuck_ = false;
};

// --- In the process that reads

/// Where answers go: what was the standard output, which from now on leads nowhere, so that what libraries
/// print does not get between them. Nothing where that cannot be done.
[[nodiscard]] std::optional<int> take_over_output();
/// False when nobody takes them.
[[nodiscard]] bool answer_bytes(int out, const void* bytes, std::size_t count);

/// Bounds what this process may take, unless it was bounded closer from outside: memory, processor time, no
/// file to write; and it ends when the one that asked does.
void keep_process_to(std::uint64_t memory_mb, std::uint64_t cpu_seconds);
/// The MB of memory that this run and what it starts may take, if somebody bounded it.
[[nodiscard]] std::optional<std::uint64_t> memory_bound_mb();

}  // namespace scalpmark::models
