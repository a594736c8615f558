#pragma once

#include <functional>
#include <string>

#include "geometry/base/message.h"
#include "geometry/hands/cap_today.h"
#include "viewer/words/numbers.h"

namespace scalpmark::viewer {

/// Writes a length with its unit, never negative: tape_length, or what the user reads tapes in.
using LengthInWords = std::function<std::string(double mm)>;

/// How high the brim is to be over the four points on this head, for whoever puts the cap on: "Brim 2.0 cm
/// over the nasion, ...". A point that the brim lies below is said to be under it.
[[nodiscard]] geometry::Message brim_sentence(const geometry::BrimHeights& heights,
                                              const LengthInWords& length = tape_length);

/// What to do with the cap as it sits today, and where the pulse goes if nothing is done: "Slide the cap
/// 0.5 cm back and turn its arrow 4 degrees to the patient's left; as it sits the pulse goes 0.7 cm forward,
/// give or take 0.2 cm." Moves that the tapes cannot tell from none are left out.
[[nodiscard]] geometry::Message cap_sentence(const geometry::CapToday& today,
                                             const LengthInWords& length = tape_length);

/// What the readings leave open and what to measure for it; empty when they say all.
[[nodiscard]] geometry::Message unsaid_sentence(const geometry::FoundSlip& found);

}  // namespace scalpmark::viewer
