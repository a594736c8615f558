#pragma once

#include <string>
#include <vector>

namespace scalpmark::models {

/// The libraries that geometry and models stand on, with their versions: "Eigen 3.4.0". Of a library that is
/// loaded, the version that is there; of one made of headers, the one it was built with.
[[nodiscard]] std::vector<std::string> built_on();

}  // namespace scalpmark::models
