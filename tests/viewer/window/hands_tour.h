#pragma once

#include <QString>

namespace scalpmark::window {

/// Saves, one setting beside the defaults each (side, unit, coil, rules, kind of head, size of the window),
/// the screens that show how hands do it: marks wanted and real, places that fit tapes, ways to mark, the
/// look aside.
void tour_of_hands(const QString& folder);

}  // namespace scalpmark::window
