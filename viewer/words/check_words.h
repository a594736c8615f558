#pragma once

#include "geometry/base/message.h"
#include "geometry/hands/check.h"
#include "geometry/hands/tolerance.h"
#include "viewer/words/cap_words.h"

namespace scalpmark::viewer {

/// The verdict with the numbers it rests on and, where the coil is to be moved or turned, how.
[[nodiscard]] geometry::Message check_sentence(const geometry::Check& c,
                                               const LengthInWords& length = tape_length);

/// "0.5 cm forward, 0.6 cm toward the midline, turned 3 degrees toward it": from where the coil is laid to
/// where the plan wants it. What is less than a tape or an eye tells is left out; empty where all is.
[[nodiscard]] geometry::Message move_in_words(const geometry::Check& c,
                                              const LengthInWords& length = tape_length);

/// What marks that agree do not promise: how far off hands put the pulse.
[[nodiscard]] geometry::Message by_hand_sentence(const geometry::Tolerance& t,
                                                 const LengthInWords& length = tape_length);

}  // namespace scalpmark::viewer
