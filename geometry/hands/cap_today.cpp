#include "geometry/hands/cap_today.h"

#include <Eigen/Dense>
#include <array>
#include <cmath>

#include "geometry/base/angles.h"
#include "geometry/base/error.h"

namespace scalpmark::geometry {

using Eigen::Vector3d;

namespace {

CapSlip slip_with(const CapSlip& slip, int part, double by_deg) {
  CapSlip other = slip;
  (part == 0 ? other.forward_deg : part == 1 ? other.side_deg : other.turn_deg) += by_deg;
  return other;
}

/// How the pulse scatters with the slip: it goes with the cap as the marks do.
double pulse_scatter_mm(const Head& head, const Cap& cap, const FoundSlip& found, const Vector3d& pulse) {
  constexpr double step_deg = 1;
  const SurfacePoint there = head.skin().closest(pulse);
  Eigen::Matrix3d moved = Eigen::Matrix3d::Zero(), covariance = found.covariance;
  const std::array said{found.forward_said, found.side_said, found.turn_said};
  for (int k = 0; k < 3; ++k) {
    if (!said[static_cast<std::size_t>(k)]) {
      covariance.row(k).setZero();
      covariance.col(k).setZero();
      continue;
    }
    const auto at = [&](double by_deg) {
      return head.skin().position(slipped(head, cap.sphere, there, slip_with(found.slip, k, by_deg)));
    };
    moved.col(k) = (at(step_deg) - at(-step_deg)) / (2 * step_deg);
  }
  return std::sqrt((moved * covariance * moved.transpose()).trace());
}

}  // namespace

CapSlip slip_by(const Cap& cap, const CapMove& move) {
  return {degrees(move.forward_mm / cap.sphere.radius_mm), degrees(move.right_mm / cap.sphere.radius_mm),
          move.turn_right_deg};
}

CapMove move_back(const Cap& cap, const CapSlip& slip) {
  return {-radians(slip.forward_deg) * cap.sphere.radius_mm, -radians(slip.side_deg) * cap.sphere.radius_mm,
          -slip.turn_deg};
}

Check check_slipped(const Head& head, const Case& the_case, const Plan& plan, const Cap& cap,
                    const CapSlip& slip, const CheckLimits& limits, TapeDistances tapes) {
  const Placement& treatment = plan.treatment;
  if (!treatment.mark)
    throw GeometryError(Message::of(
        "The treatment's edge mark falls off the head, so the cap carries none; choose another rule or site."));
  const auto today = [&](const Vector3d& mark) {
    return slipped(head, cap.sphere, head.skin().closest(mark), slip);
  };
  return check_marks(head, the_case, plan, today(treatment.wanted), today(*treatment.mark), limits, tapes);
}

CapToday cap_today(const Head& head, const Case& the_case, const Plan& plan, const BrimReadings& today,
                   const CheckLimits& limits, const SlipErrors& errors) {
  const Cap cap = cap_on(head, the_case.cap.brim_over_nasion_mm);
  CapToday now;
  now.found = find_slip(head, cap, today, errors);
  CapSlip& slip = now.found.slip;
  if (!now.found.forward_said) slip.forward_deg = 0;
  if (!now.found.side_said) slip.side_deg = 0;
  if (!now.found.turn_said) slip.turn_deg = 0;
  const auto within = [](double deg, double sd) { return std::abs(deg) <= 2 * sd; };
  now.sits = within(slip.forward_deg, now.found.sd.forward_deg) &&
             within(slip.side_deg, now.found.sd.side_deg) && within(slip.turn_deg, now.found.sd.turn_deg);
  now.check = check_slipped(head, the_case, plan, cap, slip, limits);
  now.back = move_back(cap, slip);
  now.pulse_sd_mm = pulse_scatter_mm(head, cap, now.found, plan.treatment.pulse);
  return now;
}

}  // namespace scalpmark::geometry
