#pragma once

#include <Eigen/Core>
#include <optional>
#include <string>
#include <vector>

#include "geometry/brain/cortex.h"
#include "geometry/coil/coil_setup.h"
#include "geometry/coil/pose.h"
#include "geometry/coil/tilt.h"
#include "geometry/head/head.h"

namespace scalpmark::geometry {

/// What of a head a coil can touch.
enum class Region { scalp, left_ear, right_ear, face };

/// Which region a skin point belongs to. An ear: from 45 mm behind the tragus to 8 mm in front of it, from 40
/// mm below to 35 above (an adult's auricle is about 63 mm long and 37 broad: memory, ours in the rest). The
/// face: in front of the tragi and less than 20 mm above the plane through them and the nasion, which is
/// where a cap's brim lies (common practice, no source).
[[nodiscard]] Region region_of(const Head& head, const Eigen::Vector3d& at);

/// A place of the coil's underside and what lies straight below it, along the coil's normal.
struct GapPoint {
  size_t part = 0;                   ///< index into the coil's parts
  Eigen::Vector2d at{0, 0};          ///< in the coil's frame
  Eigen::Vector3d on_coil{0, 0, 0};  ///< in the head's frame, the coil lifted
  std::optional<double> gap_mm;      ///< to the skin; empty past the head
};

/// What of a coil a gap is told of: a wing as seen from the handle, or all of a coil with one winding alone.
enum class Wing { left, right, whole };

/// The gap under one wing (or under the whole coil, if it has one winding alone), handle left out.
struct WingGap {
  Wing wing = Wing::whole;
  double least_mm = 0, mean_mm = 0, most_mm = 0;  ///< where there is skin below
  std::optional<double> centre_mm;  ///< under the middle of its winding; empty past the head, or without one
  Eigen::Vector2d centre{0, 0};     ///< the middle of its winding, in the coil's frame
  double off_head = 0;              ///< share of the underside with no skin below, 0 to 1
};

/// Where a part comes nearest to a region.
struct Touch {
  std::string part;
  Region region = Region::scalp;
  Eigen::Vector3d skin{0, 0, 0};  ///< in the head's frame
  Eigen::Vector2d under{0, 0};    ///< in the coil's frame
};

/// The coil is held up by something that is not scalp.
struct Obstacle {
  Region region = Region::left_ear;
  std::string part;
  Eigen::Vector3d skin{0, 0, 0};
  double raises_mm = 0;  ///< how much nearer the coil would come without it
};

/// Which of the eight ways of a compass card something moved; 0 and 0 where it hardly did.
struct EightWays {
  int forward = 0;  ///< 1, or -1 for backward
  int outward = 0;  ///< 1, or -1 for toward the midline
};

/// Which way `by` goes as seen on the coil's face; a part that hardly counts is left out.
[[nodiscard]] EightWays eight_ways(const Eigen::Vector3d& by, const LaidPose& laid);

/// Where the axis of a coil held askew goes.
struct AskewAxis {
  Eigen::Vector3d skin{0, 0, 0};    ///< where it meets the skin
  double skin_moved_mm = 0;         ///< straight, from the pulse point meant to there
  EightWays skin_way, cortex_way;   ///< which way it moved
  std::optional<CortexHit> cortex;  ///< where it meets the cortex; of the template
  double cortex_moved_mm = 0;       ///< straight, from the cortex under the coil held as meant
};

/// How a coil rests on a head.
struct Contact {
  CoilPose pose;       ///< askew where a tilt was asked for: through where its axis then meets the skin
  double lift_mm = 0;  ///< of the coil's face over the pulse point, in all: the gap at its centre
  double resting_lift_mm = 0;  ///< without what was added for cap and hair
  std::vector<Touch> touches;  ///< within touching_mm of the skin, cap and hair apart
  std::vector<WingGap> wings;
  std::vector<GapPoint> map;  ///< all over the underside
  std::vector<Obstacle> hits;
  bool rests_on_wings = false;     ///< touches on both sides of its centre line, and the centre is clear
  std::optional<double> rock_deg;  ///< the roll by which a coil resting on one wing would rest on both
  double presses_cap_mm = 0;       ///< how deep it would press into the cap entered
  double cap_mm = 0;               ///< as asked for
  Tilt tilt;                       ///< as asked for
  std::optional<AskewAxis> askew;  ///< only where a tilt was asked for
};

struct ContactOptions {
  double cap_mm = 0;       ///< thickness of a cap over the scalp; it is pressed where less is left
  double map_step_mm = 4;  ///< between places of the map; 1 to 20
  Tilt tilt{};             ///< held askew: moved out as tilt_coil() does; each angle within `most_tilt_deg`
  const Cortex* cortex = nullptr;  ///< under the head; for where the axis of a coil held askew meets it
};

/// Further over than this a coil is not held by mistake, degrees.
inline constexpr double most_tilt_deg = 30;

/// A place this near counts as touching, mm: skin gives more.
inline constexpr double touching_mm = 0.1;

/// How a coil rests where it is laid: tangent (or askew, if so asked) at the pulse point, as far from
/// it as it takes for no part to be inside the head (pose.h), plus the setup's lift for cap and hair. Where
/// it touches and what it hits is exact on the triangles; the map's gaps are looked for straight down.
/// Refuses (GeometryError) a coil without parts, options out of range, and a tilt with which the coil's axis
/// misses the head.
[[nodiscard]] Contact contact(const Head& head, const CoilSetup& setup, const LaidPose& laid,
                              const ContactOptions& options = {});

/// Whether it rests on both wings with its centre clear, to within a roll that nobody sees.
[[nodiscard]] bool on_wings(const Contact& contact);
/// Whether its centre lies on the skin, cap and hair apart.
[[nodiscard]] bool on_centre(const Contact& contact);
/// Whether it stands on one wing alone, by a roll that can be seen: rock_deg.
[[nodiscard]] bool rocks(const Contact& contact);

/// A coil held askew.
struct TiltedCoil {
  CoilPose pose;                      ///< turned; its pulse point is the one meant
  Eigen::Vector3d centre{0, 0, 0};    ///< of the coil's face
  Eigen::Vector3d axis{0, 0, -1};     ///< of the coil, toward the head, unit
  std::optional<SurfacePoint> meets;  ///< where the axis meets the skin instead
  double moved_mm = 0;                ///< from the point meant to there, straight
};

/// The coil with its centre over the pulse point, tilted about its centre and moved out straight, along the
/// pose's normal, until no part is inside the head. 20 mm under the skin a tilt
/// of 10 degrees moves the axis by 3 to 4 mm, on the skin by a fraction of one; the field's strongest place
/// goes the other way, toward the lowered side (field/moved_coil.h).
[[nodiscard]] TiltedCoil tilt_coil(const Surface& skin, const Coil& coil, const CoilPose& pose,
                                   const Tilt& tilt);

}  // namespace scalpmark::geometry
