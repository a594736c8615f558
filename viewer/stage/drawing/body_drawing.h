#pragma once

#include <vtkNew.h>
#include <vtkPolyData.h>
#include <vtkPolyDataMapper.h>
#include <vtkRenderer.h>
#include <vtkSmartPointer.h>

#include <optional>

#include "viewer/stage/drawing/nearest_layer.h"
#include "viewer/stage/scene/scene.h"

namespace scalpmark::viewer {

/// Skin or cortex. Its triangles go to the renderer once, never again for a new plan. While things move a
/// thinner mesh may stand in for it.
class BodyDrawing {
public:
  explicit BodyDrawing(vtkRenderer* renderer);
  void show(const std::optional<Body>& body, bool pickable);
  void draw_last();

  /// The thinner mesh of what is shown; nothing: there is none.
  void set_thin(const std::optional<geometry::Surface>& thin);
  void set_moving(bool moving);
  [[nodiscard]] bool draws_thin() const { return moving_ && thin_; }
  [[nodiscard]] const vtkActor* actor() const { return actor_; }

private:
  void choose();
  void light(const Body& body);

  vtkRenderer* renderer_;
  std::optional<geometry::Surface> drawn_, thin_;
  std::optional<Glow> glow_;
  bool shown_ = false, moving_ = false;
  vtkSmartPointer<vtkPolyData> data_;
  vtkNew<vtkPolyDataMapper> mapper_, thin_mapper_;
  vtkNew<NearestLayerActor> actor_, thin_actor_;
};

}  // namespace scalpmark::viewer
