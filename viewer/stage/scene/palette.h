#pragma once

#include <cstdint>

namespace scalpmark::viewer {

struct Colour {
  std::uint8_t red = 0, green = 0, blue = 0;
  friend bool operator==(const Colour&, const Colour&) = default;
};

/// `share` of the colour, the rest white.
[[nodiscard]] constexpr Colour paler(Colour c, double share) {
  const auto mix = [share](std::uint8_t v) {
    const double mixed = 255.0 - share * (255.0 - static_cast<double>(v));
    // NOLINTNEXTLINE(bugprone-incorrect-roundings): lround is not constexpr
    return static_cast<std::uint8_t>(mixed + 0.5);
  };
  return {mix(c.red), mix(c.green), mix(c.blue)};
}

/// The eight colours of Okabe and Ito (2008, "Color Universal Design"), told apart by people with any of the
/// common kinds of colour blindness. Which colour means what is our own choice; shapes say the same.
namespace okabe_ito {
inline constexpr Colour black{0, 0, 0}, orange{230, 159, 0}, sky_blue{86, 180, 233}, green{0, 158, 115},
    yellow{240, 228, 66}, blue{0, 114, 178}, vermillion{213, 94, 0}, purple{204, 121, 167};
}  // namespace okabe_ito

namespace palette {
inline constexpr Colour landmark = okabe_ito::black;
inline constexpr Colour pulse = okabe_ito::blue;
inline constexpr Colour start = okabe_ito::sky_blue;
inline constexpr Colour edge_mark = okabe_ito::vermillion;
inline constexpr Colour hotspot = okabe_ito::purple;
inline constexpr Colour treatment = okabe_ito::green;
inline constexpr Colour windings = okabe_ito::orange;
inline constexpr Colour todays = okabe_ito::black;
inline constexpr Colour angle = okabe_ito::black;
inline constexpr Colour front_axis = okabe_ito::vermillion;
inline constexpr Colour found = okabe_ito::black;
inline constexpr Colour field = okabe_ito::yellow;
inline constexpr Colour lit{255, 252,
                            242};  // the cortex under the coil: as a lamp would, and no colour of the gaps

// Neither marks nor text: calm greys and a skin that no patient's looks like.
inline constexpr Colour skin{219, 207, 196}, casing{96, 112, 128}, tape{112, 104, 98},
    tape_ground{255, 250, 226}, finger = okabe_ito::blue, construction{70, 70, 78}, cap{70, 92, 112},
                                cloth{250, 251, 252}, cortex{196, 165, 160}, background{250, 250, 248},
                                text{24, 24, 28}, quiet_text{84, 84, 90}, halo{255, 255, 255};
}  // namespace palette

/// What a thing's colour stands for.
enum class Role {
  landmark,
  pulse,
  pulse_by_hand,  ///< where hands put it, one speck a placement
  start,
  edge_mark,
  edge_mark_by_other_rule,
  sight_by_other_rule,  ///< the way from the edge to such a mark
  edge_tape,            ///< from pulse point to edge mark along the skin
  grid_link,
  hotspot,
  treatment,
  alternative,
  todays,  ///< what was marked on the head today, whatever the plan says
  found,   ///< a landmark that was asked for
  windings,
  casing,
  angle,
  front_axis,
  skin,
  cap,    ///< its brim and arrow
  cloth,  ///< of the cap
  cortex,
  lit,
  field,  ///< the induced field in a round model head
  tape,
  tape_ground,  ///< of one that is pulled over the head, with its print
  construction,
  text,
  quiet_text,
  halo
};

/// The one place where a role gets its colour.
[[nodiscard]] Colour colour_of(Role role);

}  // namespace scalpmark::viewer
