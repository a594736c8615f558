#pragma once

#include <vtkActor.h>
#include <vtkNew.h>
#include <vtkPolyDataMapper.h>
#include <vtkRenderer.h>

#include <optional>

#include "geometry/head.h"
#include "viewer/stage/things.h"

namespace scalpmark::viewer {

/// The head itself: matte and calm. Its triangles go to the renderer once per head, never again for a new
/// plan.
class Skin {
public:
  explicit Skin(vtkRenderer* renderer);
  void show(const geometry::Head& head, const Shown& shown);
  [[nodiscard]] vtkActor* actor() const { return actor_; }

private:
  std::optional<geometry::Surface> drawn_;
  vtkNew<vtkPolyDataMapper> mapper_;
  vtkNew<vtkActor> actor_;
};

}  // namespace scalpmark::viewer
