#include "tests/support/test_program.h"
#include "tests/viewer/window/bench.h"

int main(int argc, char** argv) {
  return scalpmark::tests::run_tests(argc, argv,
                                     [&] { return std::make_shared<scalpmark::window::Bench>(argc, argv); });
}
