#pragma once

#include <Eigen/Core>
#include <cstdint>
#include <functional>
#include <optional>
#include <vector>

#include "geometry/hands/errors_made.h"
#include "geometry/hands/marking_ways.h"
#include "geometry/head/head.h"
#include "geometry/plan/case.h"
#include "geometry/plan/hand_errors.h"
#include "geometry/plan/plan.h"

namespace scalpmark::geometry {

/// A region around the planned pulse. In the plane that touches the skin there: x forward, y outward (away
/// from the midline), mm.
struct SkinEllipse {
  Eigen::Vector2d centre = Eigen::Vector2d::Zero();
  double long_mm = 0, short_mm = 0;      ///< from its centre to its rim, the longest and the shortest way
  double long_axis_deg = 0;              ///< of the longest way, from forward, positive outward; -90 to 90
  std::vector<Eigen::Vector3d> outline;  ///< on the skin, closed; none at depth
};

/// How the pulse scatters around the planned one.
struct Spread {
  Eigen::Vector2d mean = Eigen::Vector2d::Zero();        ///< forward, outward, mm
  Eigen::Matrix2d covariance = Eigen::Matrix2d::Zero();  ///< mm2
  double mean_mm = 0;                                    ///< the average distance from the planned pulse
  SkinEllipse half, most;                                ///< hold 50 and 95 % of the pulses
};

/// One cause's part, to first order.
struct CauseShare {
  Cause cause = Cause::fiducials;
  double share = 0;       ///< of the mean squared distance, 0 to 1; all add up to 1
  double alone_mm = 0;    ///< average distance were this the only cause
  double without_mm = 0;  ///< average distance were this the only cause gone
  double halved_mm = 0;   ///< average distance with this error halved; of the rule, used half as often
  double depth_share = 0, depth_alone_mm = 0;  ///< share and alone of the pulse at depth
};

/// The pulse as far under the skin as the cortex lies. Tilt counts there.
struct DepthSpread {
  double depth_mm = 0;
  bool of_brain = false;        ///< the plan's brain lies so deep; else it is assumed
  bool of_field = false;        ///< where the field is strongest in a round model head; else the coil's axis
  Spread first_order, sampled;  ///< in the same two directions; no outlines
  double half_mm = 0, most_mm = 0;  ///< 50 and 95 % of the tried placements lie no further off
};

/// How much of the field, in a round model head, is left at the place where it was to be strongest, as deep
/// as the cortex lies (field/meant_field.h). 1: all.
struct FieldLeft {
  double median = 1;
  double worst = 1;  ///< 5 of 100 placements leave no more
};

/// What a way to mark the coil's place makes of the same errors, to first order.
struct WayTried {
  MarkingWay way = MarkingWay::front;
  bool right_side = true;                 ///< where the side mark is, of that way
  double mean_mm = 0, depth_mean_mm = 0;  ///< average distance of the pulse, on the skin and at depth
  double angle_mean_deg = 0;              ///< how far the angle is off on average
  std::vector<Eigen::Vector3d> marks;     ///< on the skin, in the order of coil_places
};

struct Tolerance {
  Spread first_order;                   ///< each error on its own, added up as variances
  Spread sampled;                       ///< from all placements that were tried
  double half_mm = 0, most_mm = 0;      ///< 50 and 95 % of the tried placements lie no further off
  DepthSpread at_depth;                 ///< the same at the cortex
  std::optional<FieldLeft> field_left;  ///< of the tried placements; empty where no field is known
  double angle_mean_deg = 0;            ///< how far the coil's angle is off on average, to first order
  int placements = 0;                   ///< tried
  int lost = 0;                         ///< of them fell off the head or could not be laid, and are left out
  std::vector<CauseShare> causes;       ///< the largest first
  std::optional<CauseShare> to_halve;   ///< the cause to halve, if one alone; empty without any error
  MarkRule rule = MarkRule::tape;       ///< the case's, by which the coil is laid
  std::vector<WayTried> ways;           ///< the best last; those whose marks fall off the head are left out
  std::vector<Eigen::Vector3d> pulses;  ///< on the skin, of the placements tried
};

/// Where a plan knows no cortex, the pulse is looked at so far under the skin, mm. Ours; 13 to 25 mm have
/// been measured over prefrontal and motor cortex of adults (memory).
inline constexpr double assumed_depth_mm = 20;

struct ToleranceOptions {
  int placements = 10000;  ///< 0: first order alone; at most 1 000 000
  std::uint64_t seed = 1;
  bool compare_ways = true;  ///< to mark the coil's place
  int threads = 0;           ///< 0: one for each core. The result does not depend on it.
  std::function<void()> between =
      {};  ///< called before each placement, from any thread; what it throws ends the work
};

/// How far off the pulse of the plan's treatment could be when people measure, mark and lay the coil by hand.
/// What is imitated, in order: the four points are felt for; the two tapes are halved and the vertex marked;
/// the start is measured from it, the spot that answers from the start, the site from the hotspot (or the
/// landmark from the tapes through all the landmarks that it takes), each with the reading of a tape and a
/// pencil mark; the edge mark is made there by the rule it is drawn by at the case's angle; the cap is taken
/// off and put on again; the coil is laid by the site mark, the edge mark and the angle as the eye holds it,
/// by the case's rule (or another), each for as much as it is sure (lay_on_marks.h), at a tilt that is off.
/// Eyes that look past the coil, at its edge (as the mark is drawn by eye, and again as the coil is laid) and
/// at its centre line over the hidden site mark, look aside. The pulse is where the coil's axis then meets
/// the skin. At depth it is where the field is strongest in a round model head, which under tilt goes toward
/// the lowered side while the axis goes to the other (by its lever, meant_field.h); of a coil of which no
/// field is known, or whose field is a ring, the axis. So deep as the plan's brain says that the cortex is
/// under the treatment site, else `assumed_depth_mm`. The case's spot is kept: no new search for the twitch
/// makes up for what came before, so this is the spread of placements made from the case's numbers alone. For
/// a coil laid again on marks that are right, set the first two errors to 0.
///
/// First order: derivatives of the pulse by each error, by central differences of one standard deviation (the
/// law of propagation of uncertainty: JCGM 100:2008, 5.1); the rule's is a mixture of the pulses of three
/// rules, each with its share. Sampled: errors drawn from normal distributions (JCGM 101:2008) and the whole
/// chain done anew on the skin. Distances are straight (over 30 mm of head 0.5 % less than along the skin).
/// An ellipse's outline lies on the skin as far as a tape would reach.
///
/// The cap is put on again slid and turned about the sphere under it, with the marks on it (hands/cap.h). The
/// published 10.66 mm of cap and marks without tracking (Caulfield et al. 2022, Brain Stimul 15:1192-1205)
/// are met by a cap that sits off further than is assumed; how much further is fitted to that figure by
/// build/bench_kernel, shown in DEVELOPERS.md as fitted, and no check of anything.
///
/// The same seed gives the same result whatever the number of threads; each error has its own sequence, so
/// that changing one leaves the others' draws as they were. `plan` is solve(head, entered), with_cortex()
/// where there is one. Refuses (GeometryError): an error below 0 or out of its range (ranges.h), placements
/// out of range; a plan whose treatment has no edge mark; a head on which more than half of the placements
/// are lost.
[[nodiscard]] Tolerance tolerance(const Head& head, const Case& the_case, const Plan& plan,
                                  const HandErrors& errors, const ToleranceOptions& options = {});

}  // namespace scalpmark::geometry
