// Somebody who does anything at all in the real window, for as long as one likes; after each event the plan
// shown must be what solve() makes of the case shown. Exit code 1 where it is not, with what was done lately.
// Run by hand: build/bench_random_user [SECONDS] [SEED]; without numbers 1200 and 1.
#include "tests/viewer/window/random_user.h"

#include <cstdio>
#include <cstdlib>
#include <deque>

using namespace scalpmark::window;

int main(int argc, char** argv) {
  const int seconds = argc > 1 ? std::atoi(argv[1]) : 1200;
  const unsigned seed = argc > 2 ? static_cast<unsigned>(std::atoi(argv[2])) : 1;
  TestSession session(argc, argv);
  OpenedWindow opened;
  opened.window.resize(960, 620);
  RandomUser user(opened, seed);
  std::deque<std::string> lately;
  QElapsedTimer since;
  since.start();
  long events = 0;
  for (; since.elapsed() < 1000LL * seconds; ++events) {
    lately.push_back(user.act());
    if (lately.size() > 20) lately.pop_front();
    const std::string wrong = wrong_state(opened.window);
    if (wrong.empty()) continue;
    std::printf("after %ld events: %s; lately:\n", events, wrong.c_str());
    for (const std::string& what : lately) std::printf("  %s\n", what.c_str());
    return 1;
  }
  opened.settle();
  std::printf("%ld events in %d s, seed %u: no wrong state\n", events, seconds, seed);
  return wrong_state(opened.window).empty() ? 0 : 1;
}
