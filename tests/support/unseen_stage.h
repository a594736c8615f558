#pragma once

#include <vtkGenericOpenGLRenderWindow.h>
#include <vtkNew.h>
#include <vtkRenderer.h>

#include <algorithm>
#include <memory>

#include "viewer/stage/drawing/aim.h"
#include "viewer/stage/stage.h"

namespace scalpmark::tests {

/// A stage of some size on which everything is laid out and nothing drawn: it needs no display and no OpenGL.
class UnseenStage {
public:
  UnseenStage(int width, int height) {
    window_->SetSize(width, height);
    window_->AddRenderer(renderer_);
    stage_ = std::make_unique<viewer::Stage>(renderer_);
  }
  [[nodiscard]] viewer::Stage& stage() { return *stage_; }
  void look(viewer::View view) {
    stage_->look(view);
    stage_->refresh();
  }
  /// Straight at a place, `across_mm` of the head filling the picture.
  void look_at(const viewer::Gaze& gaze, const Eigen::Vector3d& at, double across_mm) {
    const int* size = window_->GetSize();
    const double mm_per_px = across_mm / std::min(size[0], size[1]);
    viewer::aim(*renderer_, at, gaze, 0.5 * mm_per_px * size[1]);
    stage_->refresh();
  }

private:
  vtkNew<vtkGenericOpenGLRenderWindow> window_;
  vtkNew<vtkRenderer> renderer_;
  std::unique_ptr<viewer::Stage> stage_;
};

}  // namespace scalpmark::tests
