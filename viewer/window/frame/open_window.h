#pragma once

#include <string>

namespace scalpmark::window {

/// Opens the window on a case (empty: the demo case) and runs it until it is closed. Returns the exit code.
/// Refuses (viewer::ViewerError) when there is no display.
[[nodiscard]] int open_window(const std::string& case_file);

}  // namespace scalpmark::window
