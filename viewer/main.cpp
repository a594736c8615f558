#include "viewer/command_line.h"

int main(int argc, char** argv) {
  return scalpmark::viewer::run_command_line(argc, argv);
}
