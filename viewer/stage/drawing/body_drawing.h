#pragma once

#include <vtkActor.h>
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
/// thinner mesh may stand in for it, and what is lit on it is drawn apart, so that the body stays as it is.
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
  void show_light();
  void light_all();
  void light_apart();

  vtkRenderer* renderer_;
  std::optional<geometry::Surface> drawn_, thin_;
  std::optional<Body> body_;         ///< as wanted
  std::optional<Glow> all_, apart_;  ///< what is lit of the body itself, and over it
  bool shown_ = false, moving_ = false;
  vtkSmartPointer<vtkPolyData> data_;
  vtkNew<vtkPolyDataMapper> mapper_, thin_mapper_, lit_mapper_;
  vtkNew<NearestLayerActor> actor_, thin_actor_;
  vtkNew<vtkActor> lit_actor_;
};

}  // namespace scalpmark::viewer
