#pragma once

#include <Eigen/Core>
#include <vector>

#include "geometry/head/head.h"

namespace scalpmark::bench {

/// The 10-10 construction of geometry/head/landmarks.h done with VTK's general filters instead of our own:
/// vtkCutter for the plane sections, vtkStripper to join them, vtkStaticCellLocator to bring points back onto
/// the skin. The named alternative of the benchmark.
class VtkLandmarks {
public:
  explicit VtkLandmarks(const geometry::Head& head);
  ~VtkLandmarks();
  VtkLandmarks(const VtkLandmarks&) = delete;
  VtkLandmarks& operator=(const VtkLandmarks&) = delete;

  /// In no particular order: vertex iterated, midline, coronal, both side tapes, the rows F, FC, CP, P, AF,
  /// PO.
  [[nodiscard]] std::vector<Eigen::Vector3d> find();

private:
  struct Parts;
  Parts* parts_;
};

}  // namespace scalpmark::bench
