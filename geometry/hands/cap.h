#pragma once

#include <Eigen/Core>
#include <array>
#include <optional>
#include <vector>

#include "geometry/head/head.h"
#include "geometry/plan/brim_heights.h"
#include "geometry/surface/section.h"

namespace scalpmark::geometry {

/// The sphere a cap slides on, mm.
struct CapSphere {
  Eigen::Vector3d centre = Eigen::Vector3d::Zero();
  double radius_mm = 0;
};

/// How far a cap has slid from how it sat when the marks were made: turned about the centre of its sphere, in
/// degrees, about the head's three axes at once (one rotation, whose axis and angle these are the parts of;
/// the slip with all signs turned undoes it). A degree slides the cap by a sixtieth or so of its radius:
/// about 1.5 mm.
struct CapSlip {
  double forward_deg = 0;  ///< the top of the cap toward the nose, so the brim comes down over the forehead
  double side_deg = 0;     ///< the top of the cap toward the patient's right ear
  double turn_deg = 0;     ///< about the upright: the arrow to the patient's right

  friend bool operator==(const CapSlip&, const CapSlip&) = default;
};

/// The slip that undoes it.
[[nodiscard]] inline CapSlip undone(const CapSlip& slip) {
  return {-slip.forward_deg, -slip.side_deg, -slip.turn_deg};
}

/// A cap as it is to be worn: its brim level with the head's axes (the section of the skin square to `up`)
/// at the point of the midline tape `brim_over_nasion_mm` above the nasion, its arrow down the nose.
struct Cap {
  Plane brim;                                          ///< normal up
  SurfacePoint front;                                  ///< of the brim, on the midline tape
  Eigen::Vector3d front_at = Eigen::Vector3d::Zero();  ///< the same: where the arrow leaves the brim
  CapSphere sphere;
};

/// The cap put on as it should be. Its sphere is the algebraic least squares fit to the skin above the brim,
/// weighted by area. Refuses (GeometryError) a brim that is not above 0 or not below the vertex.
[[nodiscard]] Cap cap_on(const Head& head, double brim_over_nasion_mm);

/// A place turned with a cap that slips, off the skin.
[[nodiscard]] Eigen::Vector3d turned_about(const HeadAxes& axes, const CapSphere& sphere,
                                           const Eigen::Vector3d& at, const CapSlip& slip);

/// Where what lies at a point of the skin lies once the cap has slipped: turned about the sphere's centre,
/// then put back on the skin along the ray from the centre (of several places, the nearest). The undone slip
/// leads back wherever each such ray meets the skin once. Refuses (GeometryError) a place where there is no
/// skin.
[[nodiscard]] SurfacePoint slipped(const Head& head, const CapSphere& sphere, const SurfacePoint& point,
                                   const CapSlip& slip);

/// The brim on the skin of a cap that has slipped so far, a closed line, from where the arrow leaves it to
/// the patient's right. Refuses (GeometryError) a skin that ends before the brim comes round.
[[nodiscard]] std::vector<Eigen::Vector3d> brim_line(const Head& head, const Cap& cap,
                                                     const CapSlip& slip = {});

/// How high the brim of a cap so slipped is.
[[nodiscard]] BrimHeights brim_heights(const Head& head, const Cap& cap, const CapSlip& slip = {});

/// The stretches of tape that measure such heights, from each point up to the brim, in that order; empty
/// where there is no height.
[[nodiscard]] std::array<std::vector<Eigen::Vector3d>, 4> height_lines(const Head& head,
                                                                       const BrimHeights& heights);

/// The heights for fitting, in that order; where the brim lies below the point, less than zero by about as
/// much.
[[nodiscard]] std::array<double, 4> signed_brim_heights(const Head& head, const Cap& cap,
                                                        const CapSlip& slip);

/// How far beside the nasion, mm, the arrow's straight line passes at the nasion's level, positive to the
/// patient's right. The arrow is the line from the brim's front to the nasion, as it is on a cap put on as it
/// should be; slipped, it goes with the cap.
[[nodiscard]] double arrow_beside_nasion_mm(const Head& head, const Cap& cap, const CapSlip& slip = {});

}  // namespace scalpmark::geometry
