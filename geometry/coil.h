#pragma once

#include <Eigen/Core>
#include <string>
#include <vector>

namespace scalpmark::geometry {

/// A slab of a coil: an outline and its height range. Coil frame: origin at the centre of the flat face, x to
/// the coil's right as seen from behind (handle side) looking along the front axis, y along the front axis, z
/// away from the head.
struct CoilPart {
  std::string name;                      ///< "casing", "handle"
  std::vector<Eigen::Vector2d> outline;  ///< mm, counter-clockwise, not self-crossing
  double bottom_mm = 0;                  ///< height of the underside over the coil's flat face
  double top_mm = 0;
};

/// One ring of windings, for drawing.
struct Winding {
  Eigen::Vector2d centre = Eigen::Vector2d::Zero();  ///< mm
  double inner_mm = 0;                               ///< inside diameter
  double outer_mm = 0;                               ///< outside diameter
  int turns = 0;
};

/// A coil as data. Its flat face is z = 0; the pulse leaves the origin along -z.
struct Coil {
  std::string model;  ///< "figure-8-70"
  std::string title;  ///< for people
  std::vector<CoilPart> parts;
  std::vector<Winding> windings;
  double contact_patch_mm = 15;   ///< radius of skin that the face settles on
  double centre_to_edge_mm = 60;  ///< the usual figure for this casing's front edge
};

}  // namespace scalpmark::geometry
