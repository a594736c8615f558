#include "tests/support/test_program.h"
#include "tests/viewer/window/opened_window.h"

int main(int argc, char** argv) {
  return scalpmark::tests::run_tests(
      argc, argv, [&] { return std::make_shared<scalpmark::window::TestSession>(argc, argv); });
}
