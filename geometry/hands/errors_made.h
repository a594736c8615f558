#pragma once

#include <Eigen/Core>
#include <array>
#include <optional>
#include <vector>

#include "geometry/coil/mark_rule.h"
#include "geometry/coil/tilt.h"
#include "geometry/plan/case.h"

namespace scalpmark::geometry {

/// What puts the pulse off.
enum class Cause { fiducials, tape, marks, angle, rule, cap, tilt, sight };
inline constexpr std::array all_causes{Cause::fiducials, Cause::tape, Cause::marks, Cause::angle,
                                       Cause::rule,      Cause::cap,  Cause::tilt,  Cause::sight};

/// The most marks by which a coil is laid, and the most landmarks through which another is found.
inline constexpr size_t most_coil_marks = 3, most_landmarks_on_way = 8;

/// A mark over which a place of the coil is laid: how it is off, mm.
struct CoilMarkError {
  double read = 0;               ///< along the tape from the site, where one draws it
  Eigen::Vector2d pencil{0, 0};  ///< drawn, and the coil's place laid on it; forward, outward
};

/// How far the eye is off the coil's axis, degrees forward and outward, as a mark is drawn and as the coil is
/// laid on it. One look may serve several marks.
struct LookError {
  Eigen::Vector2d drawn_deg{0, 0}, laid_deg{0, 0};
};

/// A landmark that another is found by: how it is off, mm.
struct LandmarkError {
  double read = 0;               ///< along its tape
  Eigen::Vector2d pencil{0, 0};  ///< forward, outward
};

/// All that went wrong in one placement. mm and degrees; two numbers are forward (or up) and outward (or
/// across).
struct ErrorsMade {
  Eigen::Vector2d nasion{0, 0}, inion{0, 0}, left_tragus{0, 0}, right_tragus{0, 0};
  Eigen::Vector2d vertex_read{0, 0};  ///< where the two tapes are halved
  double lateral_read = 0, anterior_read = 0, distance_read = 0;
  Eigen::Vector2d spot_read{0, 0};
  Eigen::Vector2d vertex_mark{0, 0}, start_mark{0, 0}, spot_mark{0, 0}, site_mark{0, 0};
  std::array<LandmarkError, most_landmarks_on_way> landmarks{};
  std::array<CoilMarkError, most_coil_marks> coil_marks{};
  std::array<LookError, most_coil_marks> looks{};
  double line_mm = 0, line_deg = 0;  ///< the coil's centre line beside the site mark: laid, and looked at
  double angle_deg = 0;              ///< as the eye holds it
  double cap_forward_mm = 0, cap_side_mm = 0, cap_turn_deg = 0;  ///< put on again, as CapMove has them
  Tilt tilt;
  std::optional<MarkRule> laid_by;  ///< another rule than the case's
};

/// One source of error: how large it is, one standard deviation, and where it goes.
struct ErrorSource {
  Cause cause = Cause::fiducials;
  double deviation = 0;
  double& (*place)(ErrorsMade&, size_t index) = nullptr;
  size_t index = 0;  ///< which landmark, mark of the coil or look

  [[nodiscard]] double& in(ErrorsMade& made) const { return place(made, index); }
};

/// What of a placement there is to go wrong, beside the case.
struct ErrorScope {
  std::vector<double> landmark_shares;  ///< of a landmark site: of its tape each position on the way is, in
                                        ///< the order in which they are marked, the site itself the last
  size_t coil_marks = 1, looks = 1;     ///< over which the coil is laid, and for which
  bool by_site = true;                  ///< and by the site mark as well
};

/// Every source of error of a case's treatment, those without an error too: a source's number is its random
/// sequence, so that changing one error leaves the others' draws as they were.
[[nodiscard]] std::vector<ErrorSource> error_sources(const Case& the_case, const HandErrors& errors,
                                                     const ErrorScope& scope);

}  // namespace scalpmark::geometry
