#pragma once

#include <functional>
#include <memory>

namespace scalpmark::tests {

/// Runs a test program by its command line. What `set_up` makes lives while the tests run; it is not made
/// when they are only listed. Returns the program's exit code.
int run_tests(int argc, char** argv, const std::function<std::shared_ptr<void>()>& set_up = {});

}  // namespace scalpmark::tests
