#pragma once

#include "viewer/stage/scene/palette.h"

namespace scalpmark::viewer {

/// Gaps of this many millimetres and more have the scale's last colour.
inline constexpr double gap_scale_top_mm = 50;

/// The colour of a gap: from dark blue where the coil touches, by way of green, to pale yellow. Lightness
/// rises evenly with the gap and so does yellowness over blueness, which people with any of the common kinds
/// of colour blindness see; in a grey print the lightness alone tells. Even steps are even in OKLab (B.
/// Ottosson, "A perceptual color space for image processing", 2020); the way through it is ours.
[[nodiscard]] Colour gap_colour(double gap_mm);

}  // namespace scalpmark::viewer
