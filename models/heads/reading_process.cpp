#include "models/heads/reading_process.h"

#include <fcntl.h>
#include <poll.h>
#include <spawn.h>
#include <sys/prctl.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <cerrno>
#include <csignal>
#include <cstring>

#include "models/files/error.h"

extern char** environ;  // NOLINT(readability-redundant-declaration): glibc declares it, POSIX leaves it to us

namespace scalpmark::models {

namespace {

void bound(decltype(RLIMIT_AS) what, std::uint64_t most) {
  rlimit given{};
  if (::getrlimit(what, &given) != 0) return;
  const auto value = std::min(static_cast<rlim_t>(most), given.rlim_cur);
  const rlimit both{value, value};
  ::setrlimit(what, &both);
}

[[noreturn]] void refuse_start(const std::filesystem::path& program, int error) {
  if (error == EAGAIN || error == ENOMEM)
    throw ModelError(geometry::Message::of(
        "The system lets this user start no more programs, and a head is read by one of its own; close some and try again."));
  throw ModelError(geometry::Message::of(
      "The part of the program that reads heads, %1, does not start (%2); build or install the program again.",
      program.string(), std::strerror(error)));
}

}  // namespace

ReadingProcess::ReadingProcess(const std::filesystem::path& program, std::vector<std::string> words) {
  std::array<int, 2> ends{};
  if (::pipe2(ends.data(), O_CLOEXEC) != 0)
    throw ModelError(geometry::Message::of(
        "Too many files are open to read a file through; close other programs and try again."));
  from_ = ends[0];
  std::vector<char*> command;
  command.reserve(words.size() + 1);
  for (std::string& word : words) command.push_back(word.data());
  command.push_back(nullptr);
  posix_spawn_file_actions_t files;
  ::posix_spawn_file_actions_init(&files);
  ::posix_spawn_file_actions_addopen(&files, 0, "/dev/null", O_RDONLY, 0);
  ::posix_spawn_file_actions_adddup2(&files, ends[1], 1);
  // What libraries print about a file they choke on is nothing a technician can use.
  ::posix_spawn_file_actions_addopen(&files, 2, "/dev/null", O_WRONLY, 0);
  const int wrong = ::posix_spawn(&child_, program.c_str(), &files, nullptr, command.data(), environ);
  ::posix_spawn_file_actions_destroy(&files);
  ::close(ends[1]);
  if (wrong == 0) return;
  child_ = -1;
  ::close(from_);
  refuse_start(program, wrong);
}

ReadingProcess::~ReadingProcess() {
  ::close(from_);
  if (child_ <= 0) return;
  ::kill(child_, SIGKILL);
  while (::waitpid(child_, nullptr, 0) < 0 && errno == EINTR) {
  }
}

bool ReadingProcess::take(void* bytes, std::size_t count, int silent_seconds) {
  char* at = static_cast<char*>(bytes);
  while (count > 0) {
    pollfd ready{from_, POLLIN, 0};
    const int n = ::poll(&ready, 1, silent_seconds * 1000);
    if (n < 0 && errno == EINTR) continue;
    if (n == 0) stuck_ = true;
    if (n <= 0) return false;
    const ssize_t got = ::read(from_, at, count);
    if (got < 0 && errno == EINTR) continue;
    if (got <= 0) return false;
    at += got;
    count -= static_cast<std::size_t>(got);
  }
  return true;
}

bool ReadingProcess::went_over_limits() {
  constexpr int patience_ms = 1000;
  for (int waited_ms = 0; waited_ms < patience_ms; ++waited_ms) {
    int status = 0;
    if (::waitpid(child_, &status, WNOHANG) == child_) {
      child_ = -1;
      return WIFSIGNALED(status) && (WTERMSIG(status) == SIGXCPU || WTERMSIG(status) == SIGKILL);
    }
    ::poll(nullptr, 0, 1);
  }
  return false;
}

std::optional<int> take_over_output() {
  const int answers_to = ::dup(STDOUT_FILENO);
  const int nowhere = ::open("/dev/null", O_WRONLY);
  if (answers_to < 0 || nowhere < 0 || ::dup2(nowhere, STDOUT_FILENO) < 0) return {};
  return answers_to;
}

bool answer_bytes(int out, const void* bytes, std::size_t count) {
  const char* at = static_cast<const char*>(bytes);
  while (count > 0) {
    const ssize_t n = ::write(out, at, count);
    if (n < 0 && errno == EINTR) continue;
    if (n <= 0) return false;
    at += n;
    count -= static_cast<std::size_t>(n);
  }
  return true;
}

void keep_process_to(std::uint64_t memory_mb, std::uint64_t cpu_seconds) {
  ::prctl(PR_SET_PDEATHSIG, SIGKILL);
  bound(RLIMIT_CORE, 0);
  bound(RLIMIT_FSIZE, 0);  // it answers through a pipe and has no file to write
  bound(RLIMIT_CPU, cpu_seconds);
  // Sanitizers map terabytes that they never touch.
#if !defined(__SANITIZE_ADDRESS__) && !defined(__SANITIZE_THREAD__)
  bound(RLIMIT_AS, memory_mb << 20U);
#else
  (void)memory_mb;
#endif
}

std::optional<std::uint64_t> memory_bound_mb() {
  rlimit given{};
  if (::getrlimit(RLIMIT_AS, &given) != 0 || given.rlim_cur == RLIM_INFINITY) return {};
  return static_cast<std::uint64_t>(given.rlim_cur) >> 20U;
}

}  // namespace scalpmark::models
