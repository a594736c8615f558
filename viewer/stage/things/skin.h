#pragma once

#include <vtkActor.h>
#include <vtkNew.h>
#include <vtkPolyDataMapper.h>
#include <vtkRenderer.h>

#include <optional>

#include "geometry/head/head.h"
#include "viewer/stage/nearest_layer.h"
#include "viewer/stage/things.h"

namespace scalpmark::viewer {

/// The head itself: matte and calm. Its triangles go to the renderer once per head, never again for a new
/// plan. While things move a thinner mesh may stand in for it.
class Skin {
public:
  explicit Skin(vtkRenderer* renderer);
  void show(const geometry::Head& head, const Shown& shown);
  /// The thinner mesh of the head shown; nothing: there is none.
  void set_thin(const std::optional<geometry::Surface>& thin);
  void set_moving(bool moving);
  [[nodiscard]] bool draws_thin() const { return moving_ && thin_; }
  [[nodiscard]] vtkActor* actor() const { return actor_; }

private:
  void choose();

  std::optional<geometry::Surface> drawn_, thin_;
  bool shown_ = true, moving_ = false;
  vtkNew<vtkPolyDataMapper> mapper_, thin_mapper_;
  vtkNew<NearestLayerActor> actor_, thin_actor_;
};

}  // namespace scalpmark::viewer
