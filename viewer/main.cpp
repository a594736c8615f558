#include "viewer/commands/command_line.h"
#include "viewer/window/frame/open_window.h"

int main(int argc, char** argv) {
  return scalpmark::viewer::run_command_line(argc, argv, scalpmark::window::open_window);
}
