#pragma once

#include <vtkNew.h>
#include <vtkPolyData.h>
#include <vtkPolyDataMapper.h>
#include <vtkRenderer.h>

#include <optional>

#include "viewer/stage/drawing/ink.h"
#include "viewer/stage/drawing/through_skin_actor.h"
#include "viewer/stage/scene/scene.h"

namespace scalpmark::viewer {

/// What lies under the skin and is seen through it: tints, their outlines, lines. What faces away from the
/// eye is left out.
class SeenThroughDrawing {
public:
  explicit SeenThroughDrawing(vtkRenderer* renderer);
  void show(const std::optional<SeenThrough>& through);
  /// Puts it behind all others in the order of drawing: over the skin, wherever that is drawn.
  void draw_last();
  /// Outlines and lines, whose widths are in pixels.
  void draw(const Sight& sight);

private:
  vtkRenderer* renderer_;
  std::optional<SeenThrough> through_;
  vtkNew<vtkPolyData> data_;
  vtkNew<vtkPolyDataMapper> mapper_;
  vtkNew<ThroughSkinActor> tints_, lines_;
  Ink ink_;
};

}  // namespace scalpmark::viewer
