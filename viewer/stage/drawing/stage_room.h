#pragma once

#include "viewer/stage/drawing/label.h"
#include "viewer/stage/drawing/overlay.h"
#include "viewer/stage/scene/scene.h"

namespace scalpmark::viewer {

/// The column for numbers and legend, and the margin, pixels of a picture 800 high.
inline constexpr double column_px = 268, stage_margin_px = 14;

/// What has room around the head in a picture so wide: where the column would leave less of it to the head
/// than three quarters of its own width, there is none, and no numbers, remarks and legend either. What is
/// quiet among the remarks (whose field or brain it is not) is said with the caution then.
[[nodiscard]] Surroundings with_room(const Surroundings& around, double width_px, double scale);

/// How large the caution's letters are, times the usual.
[[nodiscard]] double caution_share_of(Overlay& overlay, const Surroundings& around, double width_px,
                                      double height_px, double scale);

/// The part of the picture that is the head's.
[[nodiscard]] Box room_for_head(Overlay& overlay, const Surroundings& around, double width_px,
                                double height_px, double scale);

}  // namespace scalpmark::viewer
