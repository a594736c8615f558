#pragma once

#include <vtkActor.h>
#include <vtkNew.h>
#include <vtkPolyDataMapper.h>
#include <vtkRenderer.h>

#include <string>
#include <vector>

#include "viewer/stage/ink.h"

namespace scalpmark::viewer {

/// The coil where it lies: translucent casing with drawn edges, windings inside. Moving it moves actors only.
class CoilBody {
public:
  explicit CoilBody(vtkRenderer* renderer);
  void show(const geometry::Coil& coil, const geometry::Placement& placement, const Shown& shown);
  void draw(const Sight& sight);
  /// Corners of the casing's outline in the world, for fitting the view around it.
  [[nodiscard]] const std::vector<Eigen::Vector3d>& corners() const { return corners_; }
  [[nodiscard]] vtkActor* casing() const { return casing_; }

private:
  void build(const geometry::Coil& coil);

  geometry::Coil built_;
  geometry::Placement placement_;
  bool shown_ = false, with_edge_ = false;
  std::vector<Eigen::Vector3d> corners_;
  vtkNew<vtkPolyDataMapper> windings_mapper_, casing_mapper_;
  vtkNew<vtkActor> windings_, casing_;
  std::vector<std::vector<Eigen::Vector3d>> rims_;  ///< coil frame
  Ink ink_;                                         ///< rims and front axis
};

}  // namespace scalpmark::viewer
