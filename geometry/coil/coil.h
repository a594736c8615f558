#pragma once

#include <Eigen/Core>
#include <cmath>
#include <optional>
#include <string>
#include <vector>

#include "geometry/base/angles.h"

namespace scalpmark::geometry {

/// A slab of a coil: an outline and its height range. Coil frame: origin at the centre of the flat face (of
/// an angled coil: of the fold, on the underside), x to the coil's right as seen from behind (handle side)
/// looking along the front axis, y along the front axis, z away from the head. A bent part is drawn flat and
/// then turned about the y axis.
struct CoilPart {
  std::string name;                      ///< "casing", "handle"
  std::vector<Eigen::Vector2d> outline;  ///< mm, counter-clockwise, not self-crossing
  double bottom_mm = 0;                  ///< height of the underside over the coil's flat face
  double top_mm = 0;
  double bend_deg = 0;  ///< about the front axis; positive lowers what lies to the right

  friend bool operator==(const CoilPart&, const CoilPart&) = default;
};

/// One ring of windings.
struct Winding {
  Eigen::Vector2d centre = Eigen::Vector2d::Zero();  ///< mm
  double inner_mm = 0;                               ///< inside diameter
  double outer_mm = 0;                               ///< outside diameter
  int turns = 0;
  double bend_deg = 0;     ///< as its casing's
  double height_mm = 0;    ///< of its wires' middle over the coil's flat face
  bool clockwise = false;  ///< its current, when the other winding's is not; seen from above the coil

  friend bool operator==(const Winding&, const Winding&) = default;
};

/// The line on the casing's front edge that is laid over the edge mark, for drawing.
struct FrontMark {
  Eigen::Vector2d centre = Eigen::Vector2d::Zero();  ///< mm
  double length_mm = 10;                             ///< along x

  friend bool operator==(const FrontMark&, const FrontMark&) = default;
};

/// A place of a bent part or winding, given as drawn flat, in the coil's frame.
[[nodiscard]] inline Eigen::Vector3d bent(const Eigen::Vector3d& flat, double bend_deg) {
  if (bend_deg == 0) return flat;
  const double c = std::cos(radians(bend_deg)), s = std::sin(radians(bend_deg));
  return {c * flat.x() + s * flat.z(), flat.y(), c * flat.z() - s * flat.x()};
}

/// A coil as data. Its flat face is z = 0; the pulse leaves the origin along -z.
struct Coil {
  std::string model;  ///< "figure-8-70"
  std::string title;  ///< for people
  std::string note;   ///< what its user must know, a sentence; may be empty
  std::vector<CoilPart> parts;
  std::vector<Winding> windings;
  std::optional<FrontMark> front_mark;
  double contact_patch_mm = 15;   ///< radius of skin that the face settles on
  double centre_to_edge_mm = 60;  ///< the usual figure for this casing's front edge

  friend bool operator==(const Coil&, const Coil&) = default;
};

}  // namespace scalpmark::geometry
