#pragma once

#include <cstdint>

#include "geometry/head/head.h"
#include "geometry/head/scale.h"

namespace scalpmark::geometry {

/// The three tapes of an adult drawn for a number: a woman or a man, as often; tapes normal about the means
/// of large surveys with their spreads (memory: tragus-tragus 341 (14) and 352 (13), circumference 561 (18)
/// and 574 (16); nasion-inion 360 (15) of both). They go together as the tapes of ellipsoids whose length,
/// breadth and height vary each on its own by the surveys' figures (length 7, breadth 5, height 6 mm): long
/// heads have long midlines and large circumferences. What is more than 3 spreads off is drawn again. The
/// same number gives the same tapes.
[[nodiscard]] MeasuredTapes drawn_tapes(std::uint32_t number);

/// The head for a number: `model` scaled to such tapes. Tapes that no scaling of it has together are drawn
/// again, from the number. Refuses (GeometryError) a model that can be scaled to none.
[[nodiscard]] ScaledHead drawn_head(const Head& model, std::uint32_t number);

}  // namespace scalpmark::geometry
