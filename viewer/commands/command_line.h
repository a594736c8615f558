#pragma once

#include <string>

namespace scalpmark::viewer {

/// Opens the window on a case file (empty: the demo case) and returns its exit code. Handed in, so that the
/// commands need nothing of what the window is built on.
using OpenWindow = int (*)(const std::string& case_file);

/// Runs the program's commands (commands.h), --version, --help; without one of them, `open_window`. Returns
/// the exit code: 0 when done, 2 for a command line that cannot be understood, 1 for anything else; then one
/// sentence goes to stderr and no output file is touched. Never throws.
[[nodiscard]] int run_command_line(int argc, const char* const* argv, OpenWindow open_window) noexcept;

}  // namespace scalpmark::viewer
