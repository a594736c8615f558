#pragma once

#include <vector>

#include "viewer/stage/drawing/label.h"
#include "viewer/stage/drawing/overlay.h"
#include "viewer/stage/scene/scene.h"

namespace scalpmark::viewer {

/// What each shape means, with its bottom left corner there; adds the box it takes.
void draw_legend(Overlay& overlay, const Sight& sight, const std::vector<LegendRow>& rows,
                 const Pixel& bottom_left, std::vector<Caption>& taken);

/// The table with its top left corner there; adds the box it takes, and says where it ends (y of its bottom).
double draw_numbers(Overlay& overlay, const Sight& sight, const NumberTable& table, const Pixel& top_left,
                    std::vector<Caption>& taken);

}  // namespace scalpmark::viewer
