#pragma once

#include <vtkGenericCell.h>
#include <vtkNew.h>
#include <vtkPolyData.h>
#include <vtkStaticCellLocator.h>

#include <Eigen/Geometry>
#include <cmath>
#include <limits>

#include "geometry/surface/surface.h"

namespace scalpmark::tests {

/// How deep a brain lies under a skin, found with VTK's searches instead of ours. mm.
class VtkDepth {
public:
  VtkDepth(const geometry::Surface& skin, const geometry::Surface& brain) {
    search(skin, skin_);
    search(brain, brain_);
  }

  [[nodiscard]] double nearest_mm(const Eigen::Vector3d& at) const {
    Eigen::Vector3d closest;
    vtkNew<vtkGenericCell> cell;
    vtkIdType which = 0;
    int part = 0;
    double squared = 0;
    brain_->FindClosestPoint(at.data(), closest.data(), cell, which, part, squared);
    return std::sqrt(squared);
  }

  /// The mean of the straight ways from skin to brain over a square of scalp, `step_mm` apart.
  [[nodiscard]] double mean_over_square_mm(const Eigen::Vector3d& at, const Eigen::Vector3d& inward,
                                           double side_mm, double step_mm) const {
    const Eigen::Vector3d across = inward.unitOrthogonal(), along = inward.cross(across);
    double sum = 0;
    int count = 0;
    for (double x = -side_mm / 2; x <= side_mm / 2 + 1e-9; x += step_mm)
      for (double y = -side_mm / 2; y <= side_mm / 2 + 1e-9; y += step_mm) {
        const Eigen::Vector3d from = at + x * across + y * along - 20 * inward;
        const double skin = first_mm(*skin_, from, inward), brain = first_mm(*brain_, from, inward);
        if (std::isnan(skin) || std::isnan(brain)) continue;
        sum += brain - skin;
        ++count;
      }
    return sum / count;
  }

private:
  static void search(const geometry::Surface& surface, vtkStaticCellLocator* into) {
    vtkNew<vtkPoints> points;
    points->SetDataTypeToDouble();
    for (const auto& v : surface.vertices()) points->InsertNextPoint(v.data());
    vtkNew<vtkCellArray> cells;
    for (const auto& t : surface.triangles()) {
      const vtkIdType corners[]{t[0], t[1], t[2]};
      cells->InsertNextCell(3, corners);
    }
    vtkNew<vtkPolyData> data;
    data->SetPoints(points);
    data->SetPolys(cells);
    into->SetDataSet(data);
    into->BuildLocator();
  }

  static double first_mm(vtkStaticCellLocator& where, const Eigen::Vector3d& from,
                         const Eigen::Vector3d& way) {
    const Eigen::Vector3d to = from + 120 * way;
    double share = 0;
    Eigen::Vector3d hit, in_cell;
    int part = 0;
    vtkIdType cell = 0;
    vtkNew<vtkGenericCell> found;
    if (where.IntersectWithLine(from.data(), to.data(), 0, share, hit.data(), in_cell.data(), part, cell,
                                found) == 0)
      return std::numeric_limits<double>::quiet_NaN();
    return (hit - from).norm();
  }

  vtkNew<vtkStaticCellLocator> skin_, brain_;
};

}  // namespace scalpmark::tests
