// What is entered about a patient stays on the machine: the program's system calls, watched with strace.
#include <sys/wait.h>

#include <catch2/catch.hpp>
#include <cstdlib>
#include <fstream>
#include <string>

#include "tests/support/temporary_folder.h"
#include "viewer/picture/display.h"

using scalpmark::tests::TemporaryFolder;

namespace {

/// Runs the program with these arguments for at most `seconds` under strace, with all its children, and
/// returns the calls that make or connect a socket, one on each line. Local ones (to the X server, say) are
/// left out.
std::string network_calls(const std::string& arguments, int seconds, const TemporaryFolder& folder,
                          const std::string& display = "") {
  const std::string log = (folder / "calls").string();
  const std::string command = "DISPLAY=" + display + " XDG_CONFIG_HOME=" + folder.path().string() +
                              " timeout " + std::to_string(seconds) +
                              " strace -f -qq -e trace=socket,connect,bind,sendto -o " + log + " " +
                              SCALPMARK_PROGRAM + " " + arguments + " >/dev/null 2>&1";
  const int status = std::system(command.c_str());
  REQUIRE(WIFEXITED(status));
  constexpr int timed_out = 124;
  CHECK((WEXITSTATUS(status) == 0 || WEXITSTATUS(status) == timed_out));
  std::ifstream in(log);
  REQUIRE(in);
  std::string all;
  for (std::string line; std::getline(in, line);)
    if (line.find("AF_INET") != std::string::npos || line.find("AF_NETLINK") != std::string::npos ||
        line.find("AF_PACKET") != std::string::npos)
      all += line + "\n";
  return all;
}

}  // namespace

TEST_CASE("strace sees a network socket where there is one") {
  const TemporaryFolder folder;
  const std::string log = (folder / "calls").string();
  const std::string command =
      "strace -f -qq -e trace=socket -o " + log + " bash -c 'exec 3<>/dev/tcp/127.0.0.1/9' >/dev/null 2>&1";
  (void)std::system(command.c_str());
  std::ifstream in(log);
  const std::string calls{std::istreambuf_iterator<char>(in), {}};
  CHECK(calls.find("AF_INET") != std::string::npos);
}

TEST_CASE("no command opens a network socket") {
  const TemporaryFolder folder;
  const std::string case_file = std::string(SCALPMARK_SOURCE_DIR) + "/models/demo/bench-head.json";
  const auto out = [&](const char* name) { return " --out " + (folder / name).string(); };
  CHECK_THAT(network_calls("solve " + case_file + out("plan.json"), 120, folder), Catch::Equals(""));
  CHECK_THAT(network_calls("picture " + case_file + " --size 640x480" + out("a.png"), 120, folder),
             Catch::Equals(""));
  CHECK_THAT(network_calls("sheet " + case_file + out("a.pdf"), 120, folder), Catch::Equals(""));
}

TEST_CASE("the window opens no network socket") {
  const TemporaryFolder folder;
  const scalpmark::viewer::Display display;
  CHECK_THAT(network_calls(std::string(SCALPMARK_SOURCE_DIR) + "/models/demo/bench-head.json", 8, folder,
                           display.name()),
             Catch::Equals(""));
}
