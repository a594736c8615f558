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

// The program that people call. What needs no more than kernel and files it does at once; for all else it
// becomes the whole program, whose hundred libraries take longer to link than a plan takes to solve.
int main(int argc, char** argv) {
  // A file that grows past what is allowed is a refusal to write, not an end without a word.
  std::signal(SIGXFSZ, SIG_IGN);
  using namespace scalpmark;
  if (const auto code = viewer::run_alone(argc, argv)) return *code;
  return viewer::exit_code([&] {
    const std::string whole = models::whole_program().string();
    // A picture is drawn in tens of megabytes that are touched once: as large pages they cost a fifth less of
    // the whole, and given back as soon as they are free a sixteenth less of memory. Read by glibc's malloc
    // when a program starts (GNU C Library manual, "Memory Allocation Tunables").
    if (argc > 1 && std::string_view(argv[1]) == "picture")
      ::setenv("GLIBC_TUNABLES", "glibc.malloc.hugetlb=1:glibc.malloc.mmap_threshold=262144", 0);
    ::execv(whole.c_str(), argv);
    std::cerr << "scalpmark: " << whole << " cannot be started (" << std::strerror(errno)
              << "); install the program again.\n";
    return viewer::failed;
  });
}
