#pragma once

#include <string>
#include <vector>

#include "geometry/base/message.h"

namespace scalpmark::viewer {

/// A message's pattern, in whatever language, and the texts of its parts.
struct FilledPattern {
  std::string pattern;
  std::vector<std::string> parts;
};

/// The same in inches: a number that the pattern gives centimetres or millimetres ("%1 cm", "%2 mm",
/// "%3 cm2" with the sign for a square) becomes inches with the unit's sign, and with it numbers that share
/// its unit ("%4 to %5 mm"). Numbers of anything else, and texts, stay. `parts` are those of `arguments`.
[[nodiscard]] FilledPattern in_inches(FilledPattern filled, const std::vector<geometry::Argument>& arguments);

/// An amount of whole millimetres that a text of ours names: "5 mm", "0.20 in".
[[nodiscard]] std::string whole_length(double mm);

}  // namespace scalpmark::viewer
