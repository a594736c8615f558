#include "tests/support/test_program.h"

int main(int argc, char** argv) {
  return scalpmark::tests::run_tests(argc, argv);
}
