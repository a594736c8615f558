#pragma once

#include <Eigen/Core>
#include <optional>
#include <vector>

#include "geometry/coil/coil_setup.h"
#include "geometry/coil/pose.h"
#include "geometry/head/head.h"

namespace scalpmark::geometry {

/// Whether the face counts as well: for looking for a mark, on the way to it.
enum class Where { scalp, anywhere };

/// A mark on the skin, if it falls on the head at all.
using MarkOnSkin = std::optional<SurfacePoint>;

/// How far the eye is off the coil's axis as it looks past the edge, degrees: toward the coil's front, and
/// toward its right. None: straight down the coil's normal.
struct Look {
  double front_deg = 0, right_deg = 0;
};

/// The end of a tape of that length from the pulse point along `heading` (unit, in the coil's face). `line`:
/// where the tape goes, for drawing.
[[nodiscard]] MarkOnSkin tape_mark(const Head& head, const SurfacePoint& pulse,
                                   const Eigen::Vector3d& heading, double length_mm,
                                   Where where = Where::scalp, std::vector<Eigen::Vector3d>* line = nullptr);

struct MarkBelow {
  MarkOnSkin mark;
  double gap_mm = 0;  ///< from the coil's place to the skin
};
/// Seen past a place of the coil, straight down its normal, or along the look.
[[nodiscard]] MarkBelow drop_mark(const Head& head, const LaidPose& laid, const Eigen::Vector3d& place,
                                  Where where = Where::scalp, const Look& look = {});
/// The skin nearest to a place of the coil.
[[nodiscard]] MarkBelow nearest_mark(const Head& head, const Eigen::Vector3d& place,
                                     Where where = Where::scalp);

/// Of the coil's face over the pulse point, in all, mm.
[[nodiscard]] double lift_of(const Head& head, const CoilSetup& setup, const LaidPose& laid);

/// The middle of the coil's front edge, in the coil's frame (coil.h).
[[nodiscard]] inline Eigen::Vector3d front_edge(const CoilSetup& setup) {
  return {0, setup.centre_to_edge_mm, 0};
}
/// A place given in the coil's frame, in the head's.
[[nodiscard]] Eigen::Vector3d place_of(const LaidPose& laid, const Eigen::Vector3d& on_coil, double lift_mm);

/// The mark that a place of the coil has by a rule: the tape rule runs the tape from the pulse point toward
/// the place, as long as it is far. A look counts by the drop rule alone.
[[nodiscard]] MarkOnSkin mark_of(const Head& head, const CoilSetup& setup, MarkRule rule,
                                 const LaidPose& laid, const SurfacePoint& pulse,
                                 const Eigen::Vector3d& on_coil, Where where = Where::scalp,
                                 const Look& look = {});

}  // namespace scalpmark::geometry
