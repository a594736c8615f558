#include "viewer/picture/display.h"

#include <sys/wait.h>
#include <unistd.h>

#include <catch2/catch.hpp>
#include <cerrno>
#include <chrono>
#include <csignal>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <string>
#include <thread>
#include <vector>

#include "viewer/picture/picture.h"
#include "viewer/words/error.h"

using namespace scalpmark::viewer;

TEST_CASE("without a display a virtual one is started, and gone afterwards") {
  unsetenv("DISPLAY");
  {
    const Display display;
    CHECK(display.is_virtual());
    CHECK(std::filesystem::exists("/tmp/.X11-unix/X" + display.name().substr(1)));
    // A display that answers is used as it is.
    setenv("DISPLAY", display.name().c_str(), 1);
    const Display again;
    CHECK_FALSE(again.is_virtual());
    CHECK(again.name() == display.name());
    unsetenv("DISPLAY");
  }
  // Its number may be another program's by now; that no child of ours is left says that it is gone.
  CHECK(::waitpid(-1, nullptr, WNOHANG) == -1);
  CHECK(errno == ECHILD);
}

TEST_CASE("a display that does not answer is replaced") {
  setenv("DISPLAY", ":9797", 1);
  const Display display;
  CHECK(display.is_virtual());
  CHECK(display.name() != ":9797");
}

// Other threads read it meanwhile (where the brain's cache is, say), and reading while it is written is a
// race.
TEST_CASE("drawing on a virtual display writes nothing into the environment") {
  setenv("DISPLAY", ":9797", 1);
  const auto environment = [] {
    std::vector<const char*> entries;
    for (char** entry = environ; *entry != nullptr; ++entry) entries.push_back(*entry);
    return entries;
  };
  char** const place = environ;
  const auto before = environment();
  {
    PreparedPicture picture({640, 480});
    CHECK(environment() == before);
  }
  CHECK(environment() == before);
  CHECK(environ == place);
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
