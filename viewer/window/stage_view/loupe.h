#pragma once

#include <vtkActor.h>
#include <vtkNew.h>
#include <vtkPolyDataMapper.h>
#include <vtkRenderWindow.h>
#include <vtkRenderer.h>

#include <QRectF>
#include <optional>

#include "geometry/surface/surface.h"
#include "viewer/stage/scene/camera.h"

namespace scalpmark::window {

/// A magnified view of the skin around one point, in a corner of the stage: for setting a point to a
/// millimetre. Seen from where the stage is seen from. It draws only the skin close by, so it costs little.
class Loupe {
public:
  explicit Loupe(vtkRenderWindow* window);

  /// Magnifies around a point; in the right or the left lower corner.
  void show(const geometry::Surface& skin, const Eigen::Vector3d& at, const viewer::Gaze& gaze,
            bool on_the_left);
  void hide();
  [[nodiscard]] bool is_shown() const { return at_.has_value(); }
  [[nodiscard]] const std::optional<Eigen::Vector3d>& at() const { return at_; }
  [[nodiscard]] bool is_on_the_left() const { return on_the_left_; }
  /// Where it is, as shares of the stage's width and height from the top left.
  [[nodiscard]] QRectF place() const;
  /// Of the skin, from rim to rim.
  static constexpr double across_mm = 36;

private:
  vtkRenderWindow* window_;
  vtkNew<vtkRenderer> renderer_;
  vtkNew<vtkPolyDataMapper> mapper_;
  vtkNew<vtkActor> actor_;
  std::optional<Eigen::Vector3d> at_;
  bool on_the_left_ = false;
};

}  // namespace scalpmark::window
