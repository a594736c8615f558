#pragma once

#include <string>

namespace scalpmark::viewer {

/// "scalpmark 0.1.0", and a line that names what it is built on, with the versions that are in use.
[[nodiscard]] std::string version_text();

}  // namespace scalpmark::viewer
