#include "viewer/display.h"

#include <sys/wait.h>

#include <catch2/catch.hpp>
#include <cerrno>
#include <cstdlib>
#include <filesystem>
#include <string>

#include "viewer/error.h"

using namespace scalpmark::viewer;

TEST_CASE("without a display a virtual one is started, and gone afterwards") {
  unsetenv("DISPLAY");
  {
    const Display display;
    CHECK(display.is_virtual());
    const char* name = std::getenv("DISPLAY");
    REQUIRE(name != nullptr);
    const std::string socket = std::string("/tmp/.X11-unix/X") + (name + 1);
    CHECK(std::filesystem::exists(socket));
    // A display that answers is used as it is.
    const Display again;
    CHECK_FALSE(again.is_virtual());
  }
  CHECK(std::getenv("DISPLAY") == nullptr);
  // Its number may be another program's by now; that no child of ours is left says that it is gone.
  CHECK(::waitpid(-1, nullptr, WNOHANG) == -1);
  CHECK(errno == ECHILD);
}

TEST_CASE("a display that does not answer is replaced, and its name put back") {
  setenv("DISPLAY", ":9797", 1);
  {
    const Display display;
    CHECK(display.is_virtual());
    CHECK(std::string(std::getenv("DISPLAY")) != ":9797");
  }
  CHECK(std::string(std::getenv("DISPLAY")) == ":9797");
}

TEST_CASE("without a display and without Xvfb the sentence says what to install") {
  unsetenv("DISPLAY");
  const std::string path = std::getenv("PATH");
  setenv("PATH", "/nowhere", 1);
  CHECK_THROWS_WITH(Display(), Catch::Contains("install the Debian package xvfb"));
  setenv("PATH", path.c_str(), 1);
}
