#include "geometry/base/all_cores.h"

#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <catch2/catch.hpp>
#include <stdexcept>

using scalpmark::geometry::on_all_cores;

TEST_CASE("every piece of work is done once, on however many threads") {
  for (const int threads : {0, 1, 3}) {
    std::vector<std::atomic<int>> done(100);
    on_all_cores(
        done.size(), [&](size_t i) { ++done[i]; }, threads);
    for (const auto& times : done) REQUIRE(times == 1);
  }
}

TEST_CASE("what a piece of work throws arrives once all threads have ended") {
  std::atomic<int> running{0};
  const auto work = [&](size_t i) {
    ++running;
    if (i == 7) {
      --running;
      throw std::runtime_error("the seventh");
    }
    --running;
  };
  CHECK_THROWS_WITH(on_all_cores(50, work, 3), "the seventh");
  CHECK(running == 0);
}

TEST_CASE("where the system gives no further thread the work is done all the same") {
  // Apart, since a limit on a user's threads cannot be taken back; the superuser has none, so as somebody
  // else.
  const pid_t child = ::fork();
  REQUIRE(child >= 0);
  if (child == 0) {
    const rlimit none{0, 0};
    ::setrlimit(RLIMIT_NPROC, &none);
    if (::geteuid() == 0 && (::setgid(65534) != 0 || ::setuid(65534) != 0)) ::_exit(2);
    std::atomic<int> done{0};
    try {
      on_all_cores(
          20, [&](size_t) { ++done; }, 4);
    } catch (...) {
      ::_exit(1);
    }
    ::_exit(done == 20 ? 0 : 1);
  }
  int status = 0;
  REQUIRE(::waitpid(child, &status, 0) == child);
  REQUIRE(WIFEXITED(status));
  CHECK(WEXITSTATUS(status) == 0);
}
