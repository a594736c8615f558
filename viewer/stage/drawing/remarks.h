#pragma once

#include <vector>

#include "viewer/stage/drawing/label.h"
#include "viewer/stage/drawing/overlay.h"
#include "viewer/stage/scene/scene.h"

namespace scalpmark::viewer {

/// Remarks under each other in that place, and the box they take: no wider, and no higher either. Where there
/// are too many they close up, their letters grow smaller (not under 12 pixels), and plain ones are left out
/// whole, the last first: the heading over them stays, with an ellipsis. What is left out last are the last
/// lines of what remains.
void draw_remarks(Overlay& overlay, const Sight& sight, const std::vector<Remark>& remarks, const Box& place,
                  std::vector<Caption>& taken);

}  // namespace scalpmark::viewer
