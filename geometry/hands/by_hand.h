#pragma once

#include <Eigen/Core>
#include <optional>
#include <vector>

#include "geometry/field/meant_field.h"
#include "geometry/hands/cap.h"
#include "geometry/hands/errors_made.h"
#include "geometry/hands/marking_ways.h"
#include "geometry/head/head.h"
#include "geometry/plan/case.h"
#include "geometry/plan/lay_on_marks.h"
#include "geometry/plan/plan.h"

namespace scalpmark::geometry {

/// How far a placement is off the planned one, in the plane that touches the skin there: pulse on the skin
/// forward and outward, the same at depth, mm; angle, degrees toward the midline.
using OffByHand = Eigen::Matrix<double, 5, 1>;
[[nodiscard]] inline Eigen::Vector2d on_skin(const OffByHand& off) {
  return off.head<2>();
}
[[nodiscard]] inline Eigen::Vector2d at_depth(const OffByHand& off) {
  return off.segment<2>(2);
}

/// Whether the eye has a say in the coil's angle, beside the marks.
enum class HeldByEye { no, yes };

/// What is looked at under the skin: so deep, and how far beside the coil's axis for each degree of tilt
/// (none: on the axis).
struct AtDepth {
  double depth_mm = 0;
  TiltLever lever;
};

/// Makes a plan's treatment by hand, errors and all: what tolerance() tries again and again.
class ByHand {
public:
  /// `places`: where on the coil its edge marks are met; all are drawn by the treatment's rule. `depth`:
  /// under the skin along the coil's axis. Refuses (GeometryError) a mark that falls off the head.
  ByHand(const Head& head, const Case& the_case, const Plan& plan, const HandErrors& errors,
         std::vector<CoilPlace> places, const AtDepth& depth, HeldByEye by_eye = HeldByEye::yes);

  struct Made {
    SurfacePoint pulse;
    CoilPose pose;  ///< as laid, tilt and all; not lifted
    OffByHand off = OffByHand::Zero();
  };
  /// Nothing when it falls off the head. `exact_mm`: how closely the vertex halves its tapes and the marks
  /// are met. `expected`: what comes of it, nearly.
  [[nodiscard]] std::optional<Made> make(const ErrorsMade& made, double exact_mm,
                                         const OffByHand& expected = OffByHand::Zero()) const;

  [[nodiscard]] const ErrorScope& scope() const { return scope_; }
  [[nodiscard]] const Surface& skin() const { return head_.skin(); }
  /// The edge marks, all errors apart.
  [[nodiscard]] const std::vector<Eigen::Vector3d>& marks() const { return marks_; }
  /// An offset on the skin laid out with a tape from the planned pulse.
  [[nodiscard]] Eigen::Vector3d laid_out(const Eigen::Vector2d& offset) const;

private:
  /// How far a mark's look carries, and how sure it is.
  struct Carried {
    double drawn_gap_mm = 0, laid_gap_mm = 0;
    double look_sd_mm = 0;
  };

  void put_cap_on(const HandErrors& errors);
  void measure_gaps(const HandErrors& errors);
  void follow_landmark();
  [[nodiscard]] Eigen::Vector3d in_space(const Eigen::Vector2d& offset) const;
  [[nodiscard]] Eigen::Vector2d flat(const Eigen::Vector3d& away) const;
  [[nodiscard]] SurfacePoint nudged(const Head& head, const SurfacePoint& at,
                                    const Eigen::Vector2d& by) const;
  /// Where a mark on the cap lies once the cap is put on again.
  [[nodiscard]] SurfacePoint with_cap(const SurfacePoint& mark, const ErrorsMade& made) const;
  [[nodiscard]] Head felt_head(const ErrorsMade& made, double exact_mm) const;
  [[nodiscard]] SurfacePoint site_with(const Head& felt, const ErrorsMade& made) const;
  [[nodiscard]] SurfacePoint start_with(const Head& felt, const ErrorsMade& made) const;
  [[nodiscard]] SurfacePoint landmark_with(const Head& felt, const ErrorsMade& made) const;
  /// Draws the marks around the site; false where one falls off the head.
  [[nodiscard]] bool draw(const Head& felt, const SurfacePoint& site, const ErrorsMade& made,
                          LaidBy& by) const;
  [[nodiscard]] OffByHand off_of(const LaidOnMarks& laid, const Tilt& tilt) const;

  Head head_;
  Case case_;
  Side side_;
  Placement aim_;
  std::vector<CoilPlace> places_;
  AtDepth depth_;
  bool by_eye_;
  ErrorScope scope_;
  LaidBy sure_;  ///< how sure each mark is; without its places
  std::vector<Carried> carried_;
  std::vector<Eigen::Vector3d> marks_;
  std::optional<Cap> cap_;     ///< where it may sit off
  double line_height_mm_ = 0;  ///< what the eye looks past at the centre line
  SurfacePoint pulse_, start_;
  Eigen::Vector3d step_ = Eigen::Vector3d::Zero();  ///< from start to hotspot, in the start's frame
};

}  // namespace scalpmark::geometry
