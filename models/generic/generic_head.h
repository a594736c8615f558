#pragma once

#include "geometry/head/head.h"

namespace scalpmark::models {

/// The built-in head: adult size, closed, mirror-symmetric (x to -x), mm, in a frame of right, front, up with
/// the origin half way between the tragi. Fiducials lie exactly on the skin. Made by our own code at first
/// use, then shared.
[[nodiscard]] const geometry::Head& generic_head();

/// The same made anew, which is what the first use costs.
[[nodiscard]] geometry::Head fresh_generic_head();

}  // namespace scalpmark::models
