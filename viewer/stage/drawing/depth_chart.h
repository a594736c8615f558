#pragma once

#include <vtkChartXY.h>
#include <vtkContextActor.h>
#include <vtkNew.h>
#include <vtkRenderer.h>
#include <vtkTable.h>

#include <optional>
#include <vector>

#include "viewer/stage/drawing/label.h"
#include "viewer/stage/drawing/overlay.h"
#include "viewer/stage/scene/scene.h"

namespace scalpmark::viewer {

/// How something falls with depth, as a small chart of VTK's flat over the scene.
class DepthChart {
public:
  /// Over what the overlay draws; to be made after it.
  explicit DepthChart(vtkRenderer* renderer);

  /// As a block within `free`, above the legend or where nothing else is; adds its own box to what is taken.
  /// Where it would lie on what is in the picture (`busy`) or on what is taken, it is left out.
  void draw(Overlay& overlay, const std::optional<DepthCurve>& curve, const Box& free, double height_px,
            const Coverage& busy, std::vector<Caption>& taken);

private:
  void fill(const DepthCurve& curve);
  void set_axes(const DepthCurve& curve, double scale);

  vtkNew<vtkTable> table_;
  vtkNew<vtkChartXY> chart_;
  vtkNew<vtkContextActor> actor_;
};

}  // namespace scalpmark::viewer
