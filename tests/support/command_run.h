#pragma once

#include <sys/wait.h>

#include <algorithm>
#include <catch2/catch.hpp>
#include <cstdlib>
#include <string>

#include "tests/support/own_folder.h"

namespace scalpmark::tests {

/// What a run of the program gave.
struct Ran {
  int exit = -1;
  std::string out, err;
};

/// Runs the program (SCALPMARK_PROGRAM) as a shell would, without a display.
inline Ran run(const OwnFolder& folder, const std::string& arguments) {
  const std::string out = folder.file("stdout"), err = folder.file("stderr");
  const int status = std::system(("env -u DISPLAY XDG_CACHE_HOME='" SCALPMARK_BINARY_DIR
                                  "/test-cache' '" SCALPMARK_PROGRAM "' " +
                                  arguments + " >'" + out + "' 2>'" + err + "'")
                                     .c_str());
  return {WIFEXITED(status) ? WEXITSTATUS(status) : -1, slurp(out), slurp(err)};
}

inline void check_one_sentence(const std::string& text) {
  INFO(text);
  REQUIRE_FALSE(text.empty());
  CHECK(std::count(text.begin(), text.end(), '\n') == 1);
  CHECK(text.rfind("scalpmark: ", 0) == 0);
}

/// Lines joined to one.
inline std::string unbroken(std::string text) {
  std::replace(text.begin(), text.end(), '\n', ' ');
  return text;
}

inline const std::string bench_case = SCALPMARK_SOURCE_DIR "/models/demo/bench-head.json";

}  // namespace scalpmark::tests
