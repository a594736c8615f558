#include "geometry/hands/careful_limits.h"

#include <cmath>

#include "geometry/base/angles.h"
#include "geometry/hands/by_hand.h"
#include "geometry/hands/first_order.h"
#include "geometry/hands/marking_ways.h"
#include "geometry/hands/scatter.h"

namespace scalpmark::geometry {

CheckLimits careful_limits(const Head& head, const Case& the_case, const Plan& plan) {
  constexpr double share = 0.95, deviations = 1.96;  // of a normal error, either way
  HandErrors careful = the_case.errors;
  careful.tilt_deg = careful.other_rule_percent = careful.sight_deg = 0;
  careful.cap_forward_mm = careful.cap_side_mm = careful.cap_turn_deg = 0;
  // A check asks where the marks would have the coil, not the eye.
  careful.angle_deg = 0;
  const ByHand hand(head, the_case, plan, careful, coil_places(the_case.coil, MarkingWay::front), AtDepth{},
                    HeldByEye::no);
  const FirstOrder first = first_order(hand, error_sources(the_case, careful, hand.scope()),
                                       the_case.coil.laid_by, careful, 0, {});
  // The circle around the planned pulse.
  const Scatter scatter = scatter_of(first, PulseLevel::skin, all_once());
  double low = 0, high = 200;
  for (int i = 0; i < 30; ++i) {
    const double middle = 0.5 * (low + high);
    const EllipseForm circle{Eigen::Vector2d::Zero(), Eigen::Matrix2d::Identity(), middle * middle};
    (share_within(scatter, circle) >= share ? high : low) = middle;
  }
  return {high, deviations * std::sqrt(pi / 2) * mean_angle_deg(first)};
}

}  // namespace scalpmark::geometry
