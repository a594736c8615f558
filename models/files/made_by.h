#pragma once

#include <string>

namespace scalpmark::models {

/// The program and its version, as files say by what they were made: "Scalpmark 0.1.0".
[[nodiscard]] const std::string& made_by();

/// The version alone: "0.1.0".
[[nodiscard]] std::string program_version();

}  // namespace scalpmark::models
