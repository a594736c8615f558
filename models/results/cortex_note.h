#pragma once

namespace scalpmark::models {

/// What every mention of the cortex in a file of results says.
inline constexpr const char* cortex_note = "on the template; a person's own brain differs";

}  // namespace scalpmark::models
