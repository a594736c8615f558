#include "viewer/commands/brim_option.h"

#include <CLI/CLI.hpp>
#include <algorithm>
#include <array>
#include <cmath>
#include <optional>
#include <utility>

#include "viewer/commands/options.h"

namespace scalpmark::viewer {

geometry::BrimReadings brim_from(const std::string& option, const std::string& text) {
  const std::string how =
      "; write two or more of nasion, left_tragus, right_tragus and inion with the brim's height over it in "
      "mm, and arrow with how far to the right of the nasion it passes, as " +
      option + " nasion=25,left_tragus=31,arrow=-6.";
  geometry::BrimReadings brim;
  const std::array<std::pair<const char*, std::optional<double>*>, 5> places{
      {{"nasion", &brim.heights.nasion_mm},
       {"left_tragus", &brim.heights.left_tragus_mm},
       {"right_tragus", &brim.heights.right_tragus_mm},
       {"inion", &brim.heights.inion_mm},
       {"arrow", &brim.arrow_mm}}};
  int heights = 0;
  for (const std::string& part : split(text, ',')) {
    const auto equals = part.find('=');
    const std::string name = part.substr(0, equals);
    const auto place =
        std::find_if(places.begin(), places.end(), [&](const auto& p) { return name == p.first; });
    if (place == places.end()) throw UsageError(option + " has \"" + name + "\"" + how);
    if (*place->second) throw UsageError(option + " has " + name + " twice" + how);
    double mm = 0;
    if (equals == std::string::npos || !CLI::detail::lexical_cast(part.substr(equals + 1), mm) ||
        !std::isfinite(mm))
      throw UsageError(option + " has \"" + part + "\"" + how);
    *place->second = mm;
    heights += name != "arrow";
  }
  if (heights < 2) throw UsageError(option + " is \"" + text + "\"" + how);
  return brim;
}

}  // namespace scalpmark::viewer
