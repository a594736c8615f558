#pragma once

#include <Eigen/Core>
#include <cstdint>
#include <string>
#include <vector>

#include "geometry/surface/directions.h"
#include "geometry/surface/surface.h"
#include "models/meshes/mesh.h"

namespace scalpmark::models {

/// The colour of a thing in an export.
struct ExportColour {
  std::uint8_t red = 0, green = 0, blue = 0;
  double opacity = 1;
};

/// A thing beside the skin, with its name ("Cz", "treatment", "tape midline"): triangles in the head's frame,
/// mm.
struct ExportPart {
  std::string name;
  ExportColour colour;
  Mesh mesh;
};

/// A mark that is to stand out of a printed head: where it lies, and its shape as triangles (three corners
/// each) in the plane that touches the skin there, mm; x runs along `along`, y along normal x along.
struct MarkOnSkin {
  std::string name;
  Eigen::Vector3d at = Eigen::Vector3d::Zero(), normal = Eigen::Vector3d::UnitZ(),
                  along = Eigen::Vector3d::UnitX();
  std::vector<Eigen::Vector2d> triangles;
};

/// A head with what was worked out on it, as it is handed to other programs.
struct ExportHead {
  geometry::Surface skin;
  geometry::HeadAxes axes;
  ExportColour skin_colour;
  std::vector<ExportPart> parts;  ///< marks, tapes, coil
  std::vector<MarkOnSkin> marks;  ///< the marks once more, as a print has them
};

}  // namespace scalpmark::models
