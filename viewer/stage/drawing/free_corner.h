#pragma once

#include <vector>

#include "viewer/stage/drawing/label.h"

namespace scalpmark::viewer {

/// Where a block of that size goes within `free`: above the legend or in the corner where it covers least of
/// the head and nothing of what is taken.
[[nodiscard]] Box free_corner(double width, double height, double gap, const Box& free, const Coverage& head,
                              const std::vector<Caption>& taken);

}  // namespace scalpmark::viewer
