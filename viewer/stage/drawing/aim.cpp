#include "viewer/stage/drawing/aim.h"

#include <vtkCamera.h>

#include <algorithm>

namespace scalpmark::viewer {

using Eigen::Vector3d;

namespace {

/// The eye is this far from what it looks at. The projection is parallel, so only clipping knows.
constexpr double eye_distance_mm = 1000;

}  // namespace

Vector3d vector_of(const double* v) {
  return {v[0], v[1], v[2]};
}

void aim(vtkRenderer& renderer, const Vector3d& focus, const Gaze& gaze, double half_height_mm) {
  const Vector3d eye = focus + eye_distance_mm * gaze.toward_eye;
  vtkCamera* camera = renderer.GetActiveCamera();
  camera->ParallelProjectionOn();
  camera->SetFocalPoint(focus.data());
  camera->SetPosition(eye.data());
  camera->SetViewUp(gaze.up.data());
  camera->SetParallelScale(half_height_mm);
  camera->SetClippingRange(10, 2 * eye_distance_mm);
}

Sight sight_of(vtkRenderer& renderer, double scale) {
  vtkCamera* camera = renderer.GetActiveCamera();
  camera->ParallelProjectionOn();
  camera->SetClippingRange(10, 2 * eye_distance_mm);
  const int* size = renderer.GetSize();
  Sight s;
  s.width_px = size[0];
  s.height_px = size[1];
  s.scale = scale;
  s.toward_eye = -vector_of(camera->GetDirectionOfProjection()).normalized();
  const Vector3d up = vector_of(camera->GetViewUp());
  s.up = (up - up.dot(s.toward_eye) * s.toward_eye).normalized();
  s.focus = vector_of(camera->GetFocalPoint());
  s.mm_per_px = 2 * camera->GetParallelScale() / std::max(1, size[1]);
  const double* centre = camera->GetWindowCenter();
  s.focus_px = {0.5 * s.width_px * (1 - centre[0]), 0.5 * s.height_px * (1 + centre[1])};
  return s;
}

std::optional<geometry::SurfacePoint> skin_under(const geometry::Surface& skin, const Sight& sight,
                                                 const Pixel& at) {
  const auto hit = skin.ray_hit(sight.unproject(at) + eye_distance_mm * sight.toward_eye, -sight.toward_eye,
                                2 * eye_distance_mm);
  if (!hit) return {};
  return hit->point;
}

}  // namespace scalpmark::viewer
