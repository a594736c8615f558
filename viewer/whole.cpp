#include <csignal>

#include "viewer/commands/command_line.h"
#include "viewer/window/frame/open_window.h"

int main(int argc, char** argv) {
  // A file that grows past what is allowed is a refusal to write, not an end without a word.
  std::signal(SIGXFSZ, SIG_IGN);
  return scalpmark::viewer::run_command_line(argc, argv, scalpmark::window::open_window);
}
