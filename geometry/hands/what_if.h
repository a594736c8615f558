#pragma once

#include <Eigen/Core>
#include <optional>

#include "geometry/hands/cap_today.h"
#include "geometry/head/head.h"
#include "geometry/plan/case.h"
#include "geometry/plan/plan.h"

namespace scalpmark::geometry {

/// How an eye sees the coil's edge over the skin: the three lie in line.
struct LineOfSight {
  Eigen::Vector3d eye = Eigen::Vector3d::Zero(), edge = Eigen::Vector3d::Zero(),
                  skin = Eigen::Vector3d::Zero();
};

/// What one mistake does, everything else being done right.
struct WhatIf {
  Eigen::Vector3d meant = Eigen::Vector3d::Zero();  ///< where the pulse was to go, on the skin
  Placement really;                                 ///< the coil as the mistake puts it
  double off_mm = 0;                                ///< along the skin from meant to the real pulse
  std::optional<Eigen::Vector3d> vertex;            ///< as it was marked, where that is the mistake
  std::optional<LineOfSight> sight;                 ///< along which it was laid, where that is the mistake
};

/// Which length was read wrongly.
enum class Misread {
  lateral,         ///< from the vertex toward the ear: moves the start
  anterior,        ///< then forward: moves the start
  treatment,       ///< forward from the hotspot: moves the treatment site
  centre_to_edge,  ///< from the site to the edge mark: moves the coil that is laid by that mark
};

/// The vertex marked `forward_mm` too far forward and `right_mm` too far to the patient's right; the start
/// measured from there, along the tape from tragus to tragus over the wrong vertex. Refuses (GeometryError)
/// more than 50 mm, and a start that falls off the head.
[[nodiscard]] WhatIf if_vertex_off(const Head& head, const Case& the_case, const Plan& plan,
                                   double forward_mm, double right_mm);

/// One length read `by_mm` too long (too short if negative). Refuses (GeometryError) a treatment length where
/// the treatment is a landmark, and what solve() refuses of the wrong length.
[[nodiscard]] WhatIf if_misread(const Head& head, const Case& the_case, const Plan& plan, Misread which,
                                double by_mm);

/// The coil turned `by_deg` toward the midline with its edge left on the treatment's edge mark. Refuses
/// (GeometryError) a plan whose treatment has no edge mark, and an angle no placement fits.
[[nodiscard]] WhatIf if_coil_turned(const Head& head, const Case& the_case, const Plan& plan, double by_deg);

/// The coil turned `by_deg` toward the midline about its centre, over the treatment's pulse point. Refuses
/// (GeometryError) more than 90 degrees.
[[nodiscard]] WhatIf if_turned_in_place(const Head& head, const Case& the_case, const Plan& plan,
                                        double by_deg);

/// The treatment's coil standing off: so much more gap under it (hair, a fold of the cap), or held askew,
/// clear of the head; the pulse is where its axis then meets the skin. Its edge marks are left out. Refuses
/// (GeometryError) a gap below 0 or over 30 mm, a tilt over `most_tilt_deg`, and one whose axis passes the
/// head.
[[nodiscard]] WhatIf if_standing_off(const Head& head, const Case& the_case, const Plan& plan, double gap_mm,
                                     const Tilt& tilt);

/// The cap with the treatment's two marks on it slid or turned by so much (hands/cap_today.h); the coil laid
/// by them. Refuses (GeometryError) a cap slid by more than 50 mm or turned by more than 30 degrees, and what
/// check_slipped() refuses.
[[nodiscard]] WhatIf if_cap_slipped(const Head& head, const Case& the_case, const Plan& plan,
                                    const CapMove& move);

/// The treatment's edge mark made by the case's rule, the coil laid on it by another. Refuses as
/// if_coil_turned.
[[nodiscard]] WhatIf if_rule_changed(const Head& head, const Case& the_case, const Plan& plan,
                                     MarkRule laid_by);

/// The eye that lays the coil looks past its edge from that far off the coil's axis: from its front and its
/// right (negative: from the handle's side and its left), degrees. Its edge then seems to lie over the mark
/// where it does not. Refuses (GeometryError) as if_coil_turned, more than 45 degrees, and a case whose coil
/// is not laid by looking past its edge (the drop rule).
[[nodiscard]] WhatIf if_looked_aside(const Head& head, const Case& the_case, const Plan& plan,
                                     double front_deg, double right_deg);

}  // namespace scalpmark::geometry
