#pragma once

#include <Eigen/Core>
#include <array>
#include <cstdint>
#include <functional>
#include <optional>
#include <vector>

#include "geometry/head/head.h"
#include "geometry/plan/case.h"
#include "geometry/plan/hand_errors.h"
#include "geometry/plan/plan.h"

namespace scalpmark::geometry {

/// What puts the pulse off.
enum class Cause { fiducials, tape, marks, angle, rule, cap, tilt };
inline constexpr std::array all_causes{Cause::fiducials, Cause::tape, Cause::marks, Cause::angle,
                                       Cause::rule,      Cause::cap,  Cause::tilt};

/// A region of the skin around the planned pulse. In the plane that touches the skin there: x forward, y
/// outward (away from the midline), mm.
struct SkinEllipse {
  Eigen::Vector2d centre = Eigen::Vector2d::Zero();
  double long_mm = 0, short_mm = 0;      ///< from its centre to its rim, the longest and the shortest way
  double long_axis_deg = 0;              ///< of the longest way, from forward, positive outward; -90 to 90
  std::vector<Eigen::Vector3d> outline;  ///< on the skin, closed
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
  double halved_mm = 0;   ///< average distance with this error halved
};

struct Tolerance {
  Spread first_order;                   ///< each error on its own, added up as variances
  Spread sampled;                       ///< from all placements that were tried
  double half_mm = 0, most_mm = 0;      ///< 50 and 95 % of the tried placements lie no further off
  int placements = 0;                   ///< tried
  int lost = 0;                         ///< of them fell off the head or could not be laid, and are left out
  std::vector<CauseShare> causes;       ///< the largest first
  std::optional<CauseShare> to_halve;   ///< the cause to halve, if one alone; empty without any error
  MarkRule rule = MarkRule::tape;       ///< the case's, by which the mark is made and the coil laid
  std::vector<Eigen::Vector3d> pulses;  ///< on the skin, of the placements tried
};

struct ToleranceOptions {
  int placements = 10000;  ///< 0: first order alone; at most 1 000 000
  std::uint64_t seed = 1;
  int threads = 0;  ///< 0: one for each core. The result does not depend on it.
  std::function<void()> between =
      {};  ///< called before each placement, from any thread; what it throws ends the work
};

/// How far off the pulse of the plan's treatment could be when people measure, mark and lay the coil by hand.
/// What is imitated, in order: the four points are felt for; the two tapes are halved and the vertex marked;
/// the start is measured from it, the hotspot's node from the start, the site from the hotspot (or the
/// landmark from the tapes), each with the reading of a tape and a pencil mark; the edge mark is made there
/// by the case's rule at the case's angle; the cap is taken off and put on again; the coil's edge is laid on
/// the mark by the case's rule (or another), at an angle and tilt that are off. The pulse is where the coil's
/// axis then meets the skin. The case's node is kept: no new search for the twitch makes up for what came
/// before, so this is the spread of placements made from the case's numbers alone. For a coil laid again on
/// marks that are right, set the first two errors to 0.
///
/// First order: derivatives of the pulse by each error, by central differences of one standard deviation (the
/// law of propagation of uncertainty: JCGM 100:2008, 5.1). Sampled: errors drawn from normal distributions
/// (JCGM 101:2008) and the whole chain done anew on the skin. Distances are straight (over 30 mm of head 0.5
/// % less than along the skin). An ellipse's outline lies on the skin as far as a tape would reach.
///
/// With the default errors the average on the generic head is 9.2 mm. The published 10.66 mm of cap and marks
/// without tracking (Caulfield et al. 2022, Brain Stimul 15:1192-1205) take a further assumption: a cap that
/// sits off by 5.4 mm instead of 3 (or by 6.9 mm, if only laying the coil again counted). The angle's and
/// tilt's defaults come from that same paper. tests/reference/published_errors_test.cpp holds these figures.
///
/// The same seed gives the same result whatever the number of threads; each error has its own sequence, so
/// that changing one leaves the others' draws as they were. `plan` is solve(head, entered). Refuses
/// (GeometryError): an error below 0 or out of its range (ranges.h), placements out of range; a plan whose
/// treatment has no edge mark by the case's rule; a head on which more than half of the placements are lost.
[[nodiscard]] Tolerance tolerance(const Head& head, const Case& the_case, const Plan& plan,
                                  const HandErrors& errors, const ToleranceOptions& options = {});

/// The average distance from its middle of a flat normal scatter with this covariance, mm: sqrt(2 / pi) times
/// the larger standard deviation times the complete elliptic integral of the second kind.
[[nodiscard]] double mean_distance(const Eigen::Matrix2d& covariance);

}  // namespace scalpmark::geometry
