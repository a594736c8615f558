#pragma once

namespace scalpmark::viewer {

/// Runs the program's commands: solve, picture, sheet, head, --version, --help. Returns the exit code: 0 when
/// done, 2 for a command line that cannot be understood, 1 for anything else; then one sentence goes to
/// stderr and no output file is touched. Never throws.
[[nodiscard]] int run_command_line(int argc, const char* const* argv) noexcept;

}  // namespace scalpmark::viewer
