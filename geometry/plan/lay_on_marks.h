#pragma once

#include <optional>
#include <vector>

#include "geometry/coil/coil_setup.h"
#include "geometry/head/head.h"
#include "geometry/plan/placement.h"

namespace scalpmark::geometry {

/// A mark on the skin over which a place of the coil is laid.
struct MarkToMeet {
  Eigen::Vector3d on_coil = Eigen::Vector3d::Zero();  ///< the place, in the coil's frame (coil.h)
  SurfacePoint on_skin;
  double sd_mm = 1;       ///< how far off it may be by itself, each way: the less, the more it counts
  double look_sd_mm = 0;  ///< and with all marks of the same look, which are off together
  size_t look = 0;
};

/// What a coil is laid by. The site mark lies hidden under it: of that mark only whether the coil's centre
/// line runs over it can be seen, looking straight down the coil's normal.
struct LaidBy {
  std::vector<MarkToMeet> marks;     ///< by the rule the coil is laid by
  std::optional<SurfacePoint> site;  ///< under the centre line
  double site_aside_mm = 0;          ///< or so far aside of it, toward greater angles
  double site_sd_mm = 1;             ///< how far aside it may be
  std::optional<double> angle_deg;   ///< as the eye would hold it, from forward, positive toward the midline
  double angle_sd_deg = 1;
};

/// Where the laying is looked for, and how closely.
struct LayingSearch {
  SurfacePoint near;        ///< look from here
  double near_deg = 45;     ///< and from this angle
  double wanted_mm = 1e-3;  ///< stop when the next step would be no longer
  Tilt tilt;                ///< out of tangent, about the pulse point
};

/// A coil laid by marks.
struct LaidOnMarks {
  SurfacePoint pulse;
  double angle_deg = 0;  ///< of the front axis as laid, from forward, positive toward the midline
  LaidPose pose;
};

/// Lays the coil so that all it is laid by fits as well as can be: the squares of what each is missed by,
/// over the square of how far off it may be, are least together. So place and angle each come from what fixes
/// them best. With just enough to go by (an edge mark, and a site mark or an angle) all of it is met.
/// The setup's own angle does not count. Gauss and Newton's steps, slopes by Broyden's secant update. Refuses
/// (GeometryError) less than is enough, and marks that no placement of the coil fits.
[[nodiscard]] LaidOnMarks lay_on_marks(const Head& head, const CoilSetup& setup, Side side, const LaidBy& by,
                                       const LayingSearch& search);

/// Lays the coil the way staff lay it by a site mark and an edge mark: its edge over the edge mark, turned
/// until its centre line, looked at straight down the coil's normal, runs over the site mark. So the pulse
/// point and the angle are those for which the coil's edge mark, by the rule it is laid by, falls on
/// `edge_mark`, and `site` lies in the plane of the coil's normal and front axis. Refuses (GeometryError)
/// marks that no placement of the coil fits.
[[nodiscard]] LaidOnMarks lay_on_marks(const Head& head, const CoilSetup& setup, Side side,
                                       const SurfacePoint& site, const SurfacePoint& edge_mark);

/// A coil that was drawn for and laid over its edge mark alone, laid again by its wanted point and its edge
/// mark.
[[nodiscard]] LaidCoil lay_on_both(const Head& head, const CoilSetup& setup, Side side, const LaidCoil& drawn,
                                   TapeDistances tapes);

}  // namespace scalpmark::geometry
