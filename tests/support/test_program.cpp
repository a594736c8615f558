// Catch2's own code, slow to compile, is here and nowhere else.
#define CATCH_CONFIG_RUNNER
#include "tests/support/test_program.h"

#include <catch2/catch.hpp>

namespace scalpmark::tests {

int run_tests(int argc, char** argv, const std::function<std::shared_ptr<void>()>& set_up) {
  Catch::Session session;
  if (const int wrong = session.applyCommandLine(argc, argv)) return wrong;
  // A name that ctest does not hand over as it is written would run nothing, and pass.
  session.configData().warnings =
      static_cast<Catch::WarnAbout::What>(session.configData().warnings | Catch::WarnAbout::NoTests);
  const auto& asked = session.configData();
  const bool only_listing =
      asked.listTests || asked.listTestNamesOnly || asked.listTags || asked.listReporters;
  const std::shared_ptr<void> held = set_up && !only_listing ? set_up() : nullptr;
  return session.run();
}

}  // namespace scalpmark::tests
