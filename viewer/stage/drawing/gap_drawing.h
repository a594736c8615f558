#pragma once

#include <vtkActor.h>
#include <vtkNew.h>
#include <vtkPolyData.h>
#include <vtkPolyDataMapper.h>
#include <vtkRenderer.h>

#include <memory>
#include <vector>

#include "viewer/stage/drawing/ink.h"
#include "viewer/stage/drawing/label.h"
#include "viewer/stage/drawing/overlay.h"
#include "viewer/stage/scene/scene.h"

namespace scalpmark::viewer {

/// The skin under a coil in the colours of the gap over it. Its triangles go to the renderer once per map.
class GapDrawing {
public:
  explicit GapDrawing(vtkRenderer* renderer);
  void show(const std::shared_ptr<const GapsShown>& gaps);
  /// The lines of equal gap, and how far the map is lifted off the skin.
  void draw(Ink& ink, const Sight& sight);

private:
  std::shared_ptr<const GapsShown> gaps_;
  vtkNew<vtkPolyData> data_;
  vtkNew<vtkPolyDataMapper> mapper_;
  vtkNew<vtkActor> actor_;
};

/// The colours' scale in mm with the rows under it, as a block within `free` that stands where nothing else
/// does, clear of the boxes taken; adds its own.
void draw_gap_scale(Overlay& overlay, const GapScale& scale, const Box& free, const Coverage& head,
                    std::vector<Caption>& taken);

}  // namespace scalpmark::viewer
