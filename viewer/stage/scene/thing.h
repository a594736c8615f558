#pragma once

#include <optional>
#include <string_view>
#include <vector>

namespace scalpmark::viewer {

/// What can be on the stage. The patient's left and right and the caution are always there.
enum class Thing {
  skin,
  landmarks,
  tapes,
  grid,
  start,
  hotspot,
  treatment,
  alternatives,
  tolerance,
  coil,
  angle,
  edge_marks,
  wanted,
  labels,
  legend,
  numbers,
  title,
  cortex,
  gaps,
  cap,
  way_marks,
  sight,
  places,
  field,
  answers,
  course
};

/// "edge-marks", as written on the command line.
[[nodiscard]] std::string_view name_of(Thing thing);
[[nodiscard]] std::optional<Thing> thing_named(std::string_view name);
[[nodiscard]] const std::vector<Thing>& all_things();

}  // namespace scalpmark::viewer
