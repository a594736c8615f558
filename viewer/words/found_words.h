#pragma once

#include <cstddef>
#include <string>

#include "geometry/base/message.h"
#include "geometry/hands/find_by_tapes.h"

namespace scalpmark::viewer {

/// "A", "B", ...: what a place's tag says. The 27th is "27".
[[nodiscard]] std::string place_tag(std::size_t index);

/// What is to be known, and to be done, about a mark that was found: one sentence. `apart_mm`: straight, the
/// largest distance between two of the places.
[[nodiscard]] geometry::Message found_sentence(const geometry::FoundMark& mark, double apart_mm);

/// "fits within 0.2 cm, sure to 0.7 cm": one of several places, beside its tag.
[[nodiscard]] geometry::Message place_sentence(const geometry::FoundPlace& place);

}  // namespace scalpmark::viewer
