#include "viewer/stage/scene/palette.h"

namespace scalpmark::viewer {

Colour colour_of(Role role) {
  switch (role) {
    case Role::landmark:
      return palette::landmark;
    case Role::pulse:
      return palette::pulse;
    case Role::pulse_by_hand:
      return paler(palette::pulse, 0.5);
    case Role::start:
      return palette::start;
    case Role::edge_mark:
      return palette::edge_mark;
    case Role::edge_mark_by_other_rule:
    case Role::grid_link:
      return paler(palette::edge_mark, 0.45);
    case Role::sight_by_other_rule:
      return paler(palette::edge_mark, 0.6);
    case Role::edge_tape:
      return paler(palette::edge_mark, 0.8);
    case Role::hotspot:
      return palette::hotspot;
    case Role::treatment:
      return palette::treatment;
    case Role::alternative:
      return paler(palette::treatment, 0.6);
    case Role::todays:
      return palette::todays;
    case Role::found:
      return palette::found;
    case Role::windings:
      return palette::windings;
    case Role::casing:
      return palette::casing;
    case Role::angle:
      return palette::angle;
    case Role::front_axis:
      return palette::front_axis;
    case Role::skin:
      return palette::skin;
    case Role::cap:
      return palette::cap;
    case Role::cloth:
      return palette::cloth;
    case Role::cortex:
      return palette::cortex;
    case Role::field:
      return palette::field;
    case Role::lit:
      return palette::lit;
    case Role::tape:
      return palette::tape;
    case Role::tape_ground:
      return palette::tape_ground;
    case Role::construction:
      return palette::construction;
    case Role::text:
      return palette::text;
    case Role::quiet_text:
      return palette::quiet_text;
    case Role::halo:
      break;
  }
  return palette::halo;
}

}  // namespace scalpmark::viewer
