#pragma once

#include <optional>
#include <variant>
#include <vector>

#include "geometry/hands/what_if.h"

namespace scalpmark::geometry {

// One thing done wrong, everything else being done right: what hands/what_if.h works out of each, as a value.

/// The vertex marked too far forward and to the patient's right (negative: back, left), mm.
struct VertexOff {
  double forward_mm = 0, right_mm = 0;
};
/// One length read too long (negative: too short), mm.
struct TapeMisread {
  Misread which = Misread::treatment;
  double by_mm = 0;
};
/// The coil turned about its edge mark, or about its centre; degrees toward the midline (negative: away from
/// it).
struct CoilTurned {
  double by_deg = 0;
  bool about_centre = false;
};
/// The mark made by the case's rule, the coil laid on it by this one.
struct OtherRule {
  MarkRule laid_by = MarkRule::drop;
};
/// The cap with the treatment's marks on it slid or turned.
struct CapSlipped {
  CapMove move;
};
/// The eye off the coil's axis as the coil is laid: toward its front and its right (negative: its handle, its
/// left), degrees.
struct LookedAside {
  double front_deg = 0, right_deg = 0;
};
/// The coil off the skin by so much more, or with a wing lifted (positive: its left one), or its front.
struct StandsOff {
  double gap_mm = 0;
  Tilt tilt;
};

using Mistake =
    std::variant<VertexOff, TapeMisread, CoilTurned, OtherRule, CapSlipped, LookedAside, StandsOff>;

/// Whether it is made before the search, so that the search's start is what it puts off.
[[nodiscard]] bool is_before_search(const Mistake& mistake);

/// The one mistake alone. Refuses what its function in what_if.h refuses.
[[nodiscard]] WhatIf if_made(const Head& head, const Case& the_case, const Plan& plan,
                             const Mistake& mistake);

/// All of them at once, each made on what those before it in the procedure have left: the start (vertex and
/// the lengths to it), the length to the site, the edge mark, the cap, the rule, the angle, the look, the
/// coil's hold. Several that are made before the search, and none after it, are told at the start. With
/// others they are told at the site, measured from the spot that then answers (after_search.h); of a site
/// that is a landmark only the vertex is to blame, which its tapes run over. Refuses (GeometryError) what the
/// single ones refuse, and two rules to lay the coil by.
[[nodiscard]] WhatIf if_made(const Head& head, const Case& the_case, const Plan& plan,
                             const std::vector<Mistake>& mistakes);

/// The same, told at the treatment site even where all of them are made before the search.
[[nodiscard]] WhatIf if_made_at_site(const Head& head, const Case& the_case, const Plan& plan,
                                     const std::vector<Mistake>& mistakes);

}  // namespace scalpmark::geometry
