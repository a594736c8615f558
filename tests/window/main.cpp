#define CATCH_CONFIG_RUNNER
#include <catch2/catch.hpp>

#include "bench.h"

int main(int argc, char** argv) {
  Catch::Session session;
  if (const int wrong = session.applyCommandLine(argc, argv)) return wrong;
  // Listing needs no display.
  if (session.configData().listTests || session.configData().listTestNamesOnly ||
      session.configData().listTags || session.configData().listReporters)
    return session.run();
  const scalpmark::window::Bench bench(argc, argv);
  return session.run();
}
