#include "viewer/picture/display.h"

#include <X11/Xlib.h>
#include <fcntl.h>
#include <poll.h>
#include <sys/prctl.h>
#include <sys/wait.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <csignal>
#include <cstdlib>

#include "geometry/base/message.h"
#include "viewer/words/error.h"

namespace scalpmark::viewer {

namespace {

constexpr int start_within_ms = 20000;

void stop(int server) {
  kill(server, SIGTERM);
  while (waitpid(server, nullptr, 0) < 0 && errno == EINTR) {
  }
}

/// The number Xvfb writes once it is ready; empty when it ends or takes too long.
std::string read_number(int from) {
  std::string number;
  for (;;) {
    pollfd ready{from, POLLIN, 0};
    const int n = poll(&ready, 1, start_within_ms);
    if (n < 0 && errno == EINTR) continue;
    if (n <= 0) return "";
    char c = 0;
    const auto got = read(from, &c, 1);
    if (got < 0 && errno == EINTR) continue;
    if (got <= 0) return "";
    if (c == '\n') return number;
    number += c;
  }
}

}  // namespace

Display::Display() {
  if (const char* set = std::getenv("DISPLAY")) name_ = set;
  if (!name_.empty() && (connection_ = XOpenDisplay(name_.c_str())) != nullptr) return;

  std::array<int, 2> pipe_ends{};
  if (pipe2(pipe_ends.data(), O_CLOEXEC) != 0)
    throw ViewerError(geometry::Message::of(
        "Too many files are open to start a virtual display with; close other programs and try again."));
  const std::string number_to = std::to_string(pipe_ends[1]);
  // Everything the child needs is made ready before the fork.
  const std::array<const char*, 10> command{"Xvfb",     "-displayfd",   number_to.c_str(), "-screen",
                                            "0",        "1280x1024x24", "-nolisten",       "tcp",
                                            "-noreset", nullptr};
  const pid_t parent = getpid();
  const pid_t child = fork();
  if (child == 0) {
    prctl(PR_SET_PDEATHSIG, SIGTERM);
    if (getppid() != parent) _exit(127);
    // Out of the terminal's group, so that Ctrl-C reaches us first and we end it.
    setpgid(0, 0);
    const int nowhere = open("/dev/null", O_RDWR);
    if (nowhere >= 0) {
      dup2(nowhere, 0);
      dup2(nowhere, 1);
      dup2(nowhere, 2);
    }
    fcntl(pipe_ends[1], F_SETFD, 0);
    execvp(command[0], const_cast<char* const*>(command.data()));
    _exit(127);
  }
  close(pipe_ends[1]);
  if (child < 0) {
    close(pipe_ends[0]);
    throw ViewerError(geometry::Message::of(
        "The system could not start a virtual display; close other programs and try again."));
  }
  const std::string number = read_number(pipe_ends[0]);
  close(pipe_ends[0]);
  if (number.empty()) {
    stop(child);
    throw ViewerError(geometry::Message::of(
        "There is no display to draw on and the virtual one (Xvfb) did not start; install the Debian package xvfb."));
  }
  server_ = child;
  name_ = ":" + number;
  connection_ = XOpenDisplay(name_.c_str());
  if (connection_ == nullptr) {
    stop(server_);
    throw ViewerError(
        geometry::Message::of("The virtual display (Xvfb) started but does not answer; try again."));
  }
}

bool display_answers() {
  ::Display* display = XOpenDisplay(nullptr);
  if (display == nullptr) return false;
  XCloseDisplay(display);
  return true;
}

Display::~Display() {
  if (connection_ != nullptr) XCloseDisplay(connection_);
  if (server_ > 0) stop(server_);
}

}  // namespace scalpmark::viewer
