#pragma once

#include <string>
#include <string_view>

namespace scalpmark::models {

/// What stands in somebody's file, short enough for a sentence: at most 40 bytes of UTF-8, no character in
/// part, and "..." where something is left out.
[[nodiscard]] std::string cut_short(std::string_view text);

}  // namespace scalpmark::models
