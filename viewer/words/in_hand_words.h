#pragma once

#include <string>

namespace scalpmark::viewer {

/// What stands over a coil that is moved about by hand, on the stage and under it.
[[nodiscard]] std::string in_hand_headline();

}  // namespace scalpmark::viewer
