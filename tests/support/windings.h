#pragma once

#include "geometry/coil/coil.h"

namespace scalpmark::tests {

/// A flat disc with the windings of the figure-of-eight coil in most papers (Thielscher and Kammer 2002,
/// memory): the wires' middle so high over its underside.
inline geometry::Coil figure_of_eight(double height_mm = 8) {
  geometry::Coil coil;
  coil.model = "eight";
  coil.title = "Figure of eight";
  for (int i = 0; i < 90; ++i) {
    const double angle = i * M_PI / 45;
    if (i == 0) coil.parts.push_back({"casing", {}, 0, 20});
    coil.parts.front().outline.emplace_back(90 * std::cos(angle), 60 * std::sin(angle));
  }
  coil.windings = {{{-44, 0}, 56, 87, 9, 0, height_mm, true}, {{44, 0}, 56, 87, 9, 0, height_mm, false}};
  return coil;
}

/// One round winding about the coil's centre.
inline geometry::Coil ring(double radius_mm, double height_mm = 8) {
  geometry::Coil coil = figure_of_eight();
  coil.windings = {{{0, 0}, 2 * radius_mm - 1, 2 * radius_mm + 1, 1, 0, height_mm, false}};
  return coil;
}

}  // namespace scalpmark::tests
