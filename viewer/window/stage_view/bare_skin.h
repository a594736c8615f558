#pragma once

#include <vtkActor.h>
#include <vtkNew.h>
#include <vtkPolyDataMapper.h>
#include <vtkRenderer.h>

#include <optional>

#include "viewer/stage/drawing/ink.h"
#include "viewer/stage/drawing/overlay.h"
#include "viewer/stage/scene/camera.h"
#include "viewer/window/session/placing.h"

namespace scalpmark::window {

/// A skin without tapes and landmarks, on which the four points are being placed: each a dot with its
/// name.
class BareSkin {
public:
  explicit BareSkin(vtkRenderer* renderer);
  ~BareSkin();
  BareSkin(const BareSkin&) = delete;
  BareSkin& operator=(const BareSkin&) = delete;

  void show(const UnplacedHead& head);
  /// Fits the whole skin, or `across_mm` of it around a point, into the picture.
  void look(const viewer::Gaze& gaze, const std::optional<Eigen::Vector3d>& at = {}, double across_mm = 0);

  [[nodiscard]] const viewer::Sight& sight() const { return sight_; }
  [[nodiscard]] const std::optional<geometry::Surface>& skin() const { return drawn_; }
  [[nodiscard]] std::optional<geometry::SurfacePoint> skin_at(const viewer::Pixel& at) const;
  [[nodiscard]] Eigen::Vector3d position(const geometry::SurfacePoint& at) const {
    return drawn_->position(at);
  }
  [[nodiscard]] const std::optional<Eigen::Vector3d>& placed(Fiducial which) const {
    return placed_[static_cast<std::size_t>(which)];
  }
  /// The placed point nearest to a pixel, no further than `reach_px`.
  [[nodiscard]] std::optional<Fiducial> point_near(const viewer::Pixel& at, double reach_px) const;

  /// Brings points and names up to date with the camera; done by itself at the start of a frame.
  void refresh();

private:
  vtkSmartPointer<vtkRenderer> renderer_;
  std::optional<geometry::Surface> drawn_;
  std::array<std::optional<Eigen::Vector3d>, 4> placed_;
  viewer::Sight sight_;
  vtkNew<vtkPolyDataMapper> mapper_;
  vtkNew<vtkActor> actor_;
  viewer::Ink ink_;
  viewer::Overlay overlay_;
  unsigned long observer_ = 0;
};

/// How a skin without landmarks is shaded: with more shadow than the stage's, so that bumps and hollows show.
void set_bare_look(vtkProperty& look);

}  // namespace scalpmark::window
