#pragma once

#include <filesystem>

namespace scalpmark::models {

/// This user's folder for what can be made again: scalpmark in $XDG_CACHE_HOME, else in $HOME/.cache; empty
/// when neither is set.
[[nodiscard]] std::filesystem::path cache_folder();

}  // namespace scalpmark::models
