#include "viewer/display.h"

#include <catch2/catch.hpp>
#include <cstdlib>
#include <filesystem>
#include <string>

#include "viewer/error.h"

using namespace scalpmark::viewer;

TEST_CASE("without a display a virtual one is started, and gone afterwards") {
  unsetenv("DISPLAY");
  std::string socket;
  {
    const Display display;
    CHECK(display.is_virtual());
    const char* name = std::getenv("DISPLAY");
    REQUIRE(name != nullptr);
    socket = std::string("/tmp/.X11-unix/X") + (name + 1);
    CHECK(std::filesystem::exists(socket));
    // A display that answers is used as it is.
    const Display again;
    CHECK_FALSE(again.is_virtual());
  }
  CHECK(std::getenv("DISPLAY") == nullptr);
  CHECK_FALSE(std::filesystem::exists(socket));
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
