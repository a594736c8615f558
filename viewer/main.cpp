#include <unistd.h>

#include <cerrno>
#include <csignal>
#include <cstdlib>
#include <cstring>
#include <iostream>
#include <string_view>

#include "models/heads/own_program.h"
#include "viewer/commands/exit_code.h"
#include "viewer/commands/run_alone.h"

namespace {

/// How glibc's malloc is to get memory, as it reads when a program starts (GNU C Library manual, "Memory
/// Allocation Tunables"). As large pages, asked for in one piece, a plan costs a quarter less of its time, a
/// sheet or a page a fifth. A picture is drawn in tens of megabytes that are touched once: given back as soon
/// as they are free they cost a sixteenth less of memory. The window gains nothing by either.
const char* memory_for(const std::string_view command) {
  // Where threads ask for much at once, as tolerance's do, one heap for all of them makes them wait.
  if (command == "picture")
    return "glibc.malloc.hugetlb=1:glibc.malloc.arena_max=1:glibc.malloc.mmap_threshold=262144";
  if (command == "solve")
    return "glibc.malloc.hugetlb=1:glibc.malloc.arena_max=1:glibc.malloc.top_pad=67108864:"
           "glibc.malloc.mmap_threshold=33554432:glibc.malloc.trim_threshold=134217728";
  return "glibc.malloc.hugetlb=1:glibc.malloc.top_pad=67108864:glibc.malloc.mmap_threshold=33554432:"
         "glibc.malloc.trim_threshold=134217728";
}

/// A command's name, and not a case file for the window to open, or an option. What reads a stranger's file
/// asks for nothing by itself: its memory may be bounded closely.
bool is_command(const std::string_view word) {
  return !word.empty() && word != "read-skin" && word.front() != '-' &&
         word.find_first_not_of("abcdefghijklmnopqrstuvwxyz-") == word.npos;
}

/// Whether it was asked for here, and not by whoever called.
bool ask_for_memory(const std::string_view command) {
  constexpr const char* name = "GLIBC_TUNABLES";
  return std::getenv(name) == nullptr && ::setenv(name, memory_for(command), 0) == 0;
}

}  // namespace

// The program that people call. What needs no more than kernel and files it does at once; for all else it
// becomes the whole program, whose hundred libraries take longer to link than a plan takes to solve.
int main(int argc, char** argv) {
  // A file that grows past what is allowed is a refusal to write, not an end without a word.
  std::signal(SIGXFSZ, SIG_IGN);
  using namespace scalpmark;
  const std::string_view command = argc > 1 ? argv[1] : "";
  // Once more from the start: that takes two milliseconds. Where it cannot be, the same is done more slowly.
  if (is_command(command) && ask_for_memory(command) && command == "solve") ::execv("/proc/self/exe", argv);
  if (const auto code = viewer::run_alone(argc, argv)) return *code;
  return viewer::exit_code([&] {
    const std::string whole = models::whole_program().string();
    ::execv(whole.c_str(), argv);
    std::cerr << "scalpmark: " << whole << " cannot be started (" << std::strerror(errno)
              << "); install the program again.\n";
    return viewer::failed;
  });
}
