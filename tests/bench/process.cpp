// A command as people wait for it: the shortest time of several runs, and the peak memory of its largest
// process. usage: bench_process NAME RUNS COMMAND [ARGUMENT ...]
#include <fcntl.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>

int main(int argc, char** argv) {
  const int runs = argc > 3 ? std::atoi(argv[2]) : 0;
  if (runs < 1) {
    std::fputs("usage: bench_process NAME RUNS COMMAND [ARGUMENT ...]\n", stderr);
    return 2;
  }
  double best_s = 1e9;
  for (int run = 0; run < runs; ++run) {
    const auto begun = std::chrono::steady_clock::now();
    const pid_t child = fork();
    if (child == 0) {
      const int nowhere = open("/dev/null", O_WRONLY);
      dup2(nowhere, STDOUT_FILENO);
      dup2(nowhere, STDERR_FILENO);
      execvp(argv[3], argv + 3);
      _exit(127);
    }
    int status = 0;
    waitpid(child, &status, 0);
    if (!WIFEXITED(status) || WEXITSTATUS(status) != 0) {
      std::fprintf(stderr, "bench_process: %s failed\n", argv[3]);
      return 1;
    }
    best_s =
        std::min(best_s, std::chrono::duration<double>(std::chrono::steady_clock::now() - begun).count());
  }
  rusage usage{};
  getrusage(RUSAGE_CHILDREN, &usage);
  std::printf("%-28s best of %d: %6.2f s, peak %4.0f MB\n", argv[1], runs, best_s,
              static_cast<double>(usage.ru_maxrss) / 1024.0);
  return 0;
}
