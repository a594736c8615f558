#pragma once

#include <Eigen/Core>
#include <memory>
#include <optional>
#include <variant>
#include <vector>

#include "geometry/field/coil_field.h"
#include "geometry/hands/after_search.h"
#include "geometry/hands/cap_veil.h"
#include "geometry/hands/what_if.h"
#include "viewer/stage/scene/shown.h"

namespace scalpmark::viewer {

/// The vertex marked too far forward and to the patient's right (negative: back, left), mm.
struct VertexOff {
  double forward_mm = 0, right_mm = 0;
};
/// One length read too long (negative: too short), mm.
struct TapeMisread {
  geometry::Misread which = geometry::Misread::treatment;
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
  geometry::MarkRule laid_by = geometry::MarkRule::drop;
};

/// The cap with the treatment's marks on it slid or turned.
struct CapSlipped {
  geometry::CapMove move;
};

/// The eye off the coil's axis as the coil is laid: toward its front and its right (negative: its handle, its
/// left), degrees.
struct LookedAside {
  double front_deg = 0, right_deg = 0;
};

/// The coil off the skin by so much more, or with a wing lifted (positive: its left one), or its front.
struct StandsOff {
  double gap_mm = 0;
  geometry::Tilt tilt;
};

/// One thing done wrong, everything else being done right.
using Mistake =
    std::variant<VertexOff, TapeMisread, CoilTurned, OtherRule, CapSlipped, LookedAside, StandsOff>;

/// What a mistake does, beside what was meant.
struct MistakeOutcome {
  Mistake mistake;
  CoilOn meant_on = CoilOn::treatment;  ///< start or treatment: the placement that was missed
  geometry::Placement meant;
  geometry::WhatIf result;
  /// Of the field at the place where it was to be strongest, 2 cm under the skin of a round model head, along
  /// its line there: what is left, 0 to 1 (below 0: turned round). Empty where none is known.
  std::optional<double> field_left;
  std::shared_ptr<const geometry::CoilField> field;  ///< of the real coil; null where none is known
  double edge_mark_off_mm = 0;  ///< along the skin, by the case's rule; 0 where either falls off the head
  std::shared_ptr<const geometry::CapVeil> cap;        ///< as it sits, where that is the mistake
  std::vector<Eigen::Vector3d> pulse_line, edge_line;  ///< on the skin, from meant to real; empty if the same
  /// Of a mistake before the search, where the site is measured from what answers: what the search leaves of
  /// it.
  std::optional<geometry::AfterSearch> left_by_search;
};

/// Works it out by geometry/hands/what_if.h. Refuses (GeometryError) what that refuses.
[[nodiscard]] MistakeOutcome outcome_of(const geometry::Head& head, const geometry::Case& the_case,
                                        const geometry::Plan& plan, const Mistake& mistake);

}  // namespace scalpmark::viewer
