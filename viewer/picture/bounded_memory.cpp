#include "viewer/picture/bounded_memory.h"

#include <sys/resource.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <csignal>
#include <cstddef>

namespace scalpmark::viewer {

namespace {

constexpr std::array<int, 4> falls{SIGABRT, SIGSEGV, SIGBUS, SIGILL};

// A signal's handler may not make strings, so the sentence is made before.
std::array<char, 512> sentence{};
std::size_t sentence_length = 0;
std::array<struct sigaction, falls.size()> former{};

extern "C" void say_and_end(int) {
  [[maybe_unused]] const ssize_t said = ::write(STDERR_FILENO, sentence.data(), sentence_length);
  ::_exit(1);
}

}  // namespace

BoundedMemory::BoundedMemory(const std::string& what) {
  rlimit most{};
  if (::getrlimit(RLIMIT_AS, &most) != 0 || most.rlim_cur == RLIM_INFINITY) return;
  const std::string text = "scalpmark: Drawing " + what + " needs more than the " +
                           std::to_string(most.rlim_cur >> 20U) +
                           " MB of memory that this run may take; give it 2000 MB (ulimit -v).\n";
  sentence_length = std::min(text.size(), sentence.size());
  std::copy_n(text.begin(), sentence_length, sentence.begin());
  struct sigaction action {};
  action.sa_handler = say_and_end;
  for (std::size_t i = 0; i < falls.size(); ++i) ::sigaction(falls[i], &action, &former[i]);
  watching_ = true;
}

BoundedMemory::~BoundedMemory() {
  if (!watching_) return;
  for (std::size_t i = 0; i < falls.size(); ++i) ::sigaction(falls[i], &former[i], nullptr);
}

}  // namespace scalpmark::viewer
