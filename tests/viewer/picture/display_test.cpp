#include "viewer/picture/display.h"

#include <sys/wait.h>

#include <catch2/catch.hpp>
#include <cerrno>
#include <chrono>
#include <csignal>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <string>
#include <thread>

#include "viewer/words/error.h"

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

TEST_CASE("a display that starts anew or ends when its last client leaves is kept until drawing is over") {
  FILE* server = popen(
      "Xvfb -displayfd 1 -terminate -screen 0 640x480x24 -nolisten tcp 2>/dev/null & echo $!; wait", "r");
  REQUIRE(server != nullptr);
  int process = 0, number = -1;
  REQUIRE(std::fscanf(server, "%d %d", &process, &number) == 2);
  setenv("DISPLAY", (":" + std::to_string(number)).c_str(), 1);
  {
    const Display display;
    CHECK_FALSE(display.is_virtual());
    for (int i = 0; i < 3; ++i) {
      std::this_thread::sleep_for(std::chrono::milliseconds(100));
      CHECK_FALSE(Display().is_virtual());
    }
  }
  kill(process, SIGTERM);
  pclose(server);
}

TEST_CASE("without a display and without Xvfb the sentence says what to install") {
  unsetenv("DISPLAY");
  const std::string path = std::getenv("PATH");
  setenv("PATH", "/nowhere", 1);
  CHECK_THROWS_WITH(Display(), Catch::Contains("install the Debian package xvfb"));
  setenv("PATH", path.c_str(), 1);
}
