#pragma once

#include <vtkActor.h>
#include <vtkNew.h>
#include <vtkPolyDataMapper.h>
#include <vtkRenderer.h>

#include <optional>

#include "viewer/stage/scene/scene.h"

namespace scalpmark::viewer {

/// The coil's translucent casing with its windings inside. Moving it moves actors only.
class CoilDrawing {
public:
  explicit CoilDrawing(vtkRenderer* renderer);
  void show(const std::optional<CoilBody>& body);
  /// Puts it behind all others in the order of drawing.
  void draw_last();

private:
  void build(const geometry::Coil& coil);

  vtkRenderer* renderer_;
  std::optional<geometry::Coil> built_;
  vtkNew<vtkPolyDataMapper> windings_mapper_, casing_mapper_;
  vtkNew<vtkActor> windings_, casing_;
};

}  // namespace scalpmark::viewer
