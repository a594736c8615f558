#pragma once

#include <vector>

#include "viewer/stage/drawing/label.h"
#include "viewer/stage/drawing/overlay.h"
#include "viewer/stage/scene/scene.h"

namespace scalpmark::viewer {

/// A small curve with its axes as a block within `free`, above the legend or where nothing else is; adds its
/// own box to what is taken. Where it would lie on the head or on what is taken, it is left out.
void draw_depth_curve(Overlay& overlay, const DepthCurve& curve, const Box& free, const Coverage& head,
                      std::vector<Caption>& taken);

}  // namespace scalpmark::viewer
