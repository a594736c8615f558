#pragma once

#include <string>

#include "geometry/hands/cap_today.h"

namespace scalpmark::viewer {

/// Today's cap as it is written on the command line, mm: two or more of nasion, left_tragus, right_tragus and
/// inion with the brim's height, and where the arrow passes the nasion (to the patient's right; to the left
/// with a minus): "nasion=25,left_tragus=31,arrow=-6". Refuses (UsageError, naming the option) anything else.
[[nodiscard]] geometry::BrimReadings brim_from(const std::string& option, const std::string& text);

}  // namespace scalpmark::viewer
