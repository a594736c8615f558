#include "viewer/window/stage_view/stage_content.h"

#include <utility>

namespace scalpmark::window {

viewer::Shown shown_with(std::set<viewer::Thing> things, const HeldCoil& coil) {
  viewer::Shown shown;
  shown.things = std::move(things);
  shown.coil_on = coil.on;
  shown.row = coil.row;
  shown.column = coil.column;
  shown.placement = coil.placement;
  return shown;
}

}  // namespace scalpmark::window
