#pragma once

#include <string>

#include "geometry/contact.h"

namespace scalpmark::viewer {

/// "right wing" and the other names that coil files and the kernel use, as people read them; others as they
/// are.
[[nodiscard]] std::string part_in_words(const std::string& part);

/// "touches the left ear"; "touches here" on the scalp, which is where a coil is to rest.
[[nodiscard]] std::string touches(geometry::Region region);

/// "hits the left ear".
[[nodiscard]] std::string hits(geometry::Region region);

}  // namespace scalpmark::viewer
