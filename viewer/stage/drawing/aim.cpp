#include "viewer/stage/drawing/aim.h"

#include <vtkCamera.h>

#include <algorithm>
#include <cmath>

#include "geometry/base/angles.h"

namespace scalpmark::viewer {

using Eigen::Vector3d;

namespace {

/// Of a parallel projection the eye is this far from what it looks at, which only clipping knows.
constexpr double eye_distance_mm = 1000;
/// Nothing drawn is further from the focus than this, nor as near to an eye.
constexpr double drawn_reach_mm = 450, nearest_drawn_mm = 20;

void clip(vtkCamera& camera) {
  if (camera.GetParallelProjection())
    camera.SetClippingRange(10, 2 * eye_distance_mm);
  else
    camera.SetClippingRange(std::max(nearest_drawn_mm, camera.GetDistance() - drawn_reach_mm),
                            camera.GetDistance() + drawn_reach_mm);
}

}  // namespace

Vector3d vector_of(const double* v) {
  return {v[0], v[1], v[2]};
}

void aim(vtkRenderer& renderer, const Vector3d& focus, const Gaze& gaze, double half_height_mm,
         double eye_mm) {
  const bool parallel = eye_mm <= 0;
  const Vector3d eye = focus + (parallel ? eye_distance_mm : eye_mm) * gaze.toward_eye;
  vtkCamera* camera = renderer.GetActiveCamera();
  camera->SetParallelProjection(parallel);
  if (!parallel) camera->SetViewAngle(geometry::degrees(2 * std::atan(half_height_mm / eye_mm)));
  camera->SetFocalPoint(focus.data());
  camera->SetPosition(eye.data());
  camera->SetViewUp(gaze.up.data());
  camera->SetParallelScale(half_height_mm);
  clip(*camera);
}

Sight sight_of(vtkRenderer& renderer, double scale) {
  vtkCamera* camera = renderer.GetActiveCamera();
  clip(*camera);
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
  if (!camera->GetParallelProjection()) s.eye_mm = camera->GetDistance();
  s.focus_px = {0.5 * s.width_px * (1 - centre[0]), 0.5 * s.height_px * (1 + centre[1])};
  return s;
}

std::optional<geometry::SurfacePoint> skin_under(const geometry::Surface& skin, const Sight& sight,
                                                 const Pixel& at) {
  const Vector3d there = sight.unproject(at), way = sight.way_to_eye(there);
  const double from_mm = sight.eye_mm > 0 ? (sight.eye() - there).norm() : eye_distance_mm;
  const auto hit = skin.ray_hit(there + from_mm * way, -way, from_mm + eye_distance_mm);
  if (!hit) return {};
  return hit->point;
}

}  // namespace scalpmark::viewer
