#include "viewer/window/stage_view/eye.h"

#include <vtkCamera.h>

#include <cmath>

#include "viewer/stage/drawing/aim.h"
#include "viewer/window/stage_view/turntable.h"

namespace scalpmark::window {

Eye eye_of(vtkRenderer& renderer) {
  vtkCamera* camera = renderer.GetActiveCamera();
  Eye eye;
  eye.gaze.toward_eye = -viewer::vector_of(camera->GetDirectionOfProjection()).normalized();
  const Eigen::Vector3d up = viewer::vector_of(camera->GetViewUp());
  eye.gaze.up = (up - up.dot(eye.gaze.toward_eye) * eye.gaze.toward_eye).normalized();
  eye.focus = viewer::vector_of(camera->GetFocalPoint());
  eye.scale = camera->GetParallelScale();
  if (!camera->GetParallelProjection()) eye.eye_mm = camera->GetDistance();
  eye.centre_x = camera->GetWindowCenter()[0];
  eye.centre_y = camera->GetWindowCenter()[1];
  return eye;
}

void aim(vtkRenderer& renderer, const Eye& eye) {
  viewer::aim(renderer, eye.focus, eye.gaze, eye.scale, eye.eye_mm);
  renderer.GetActiveCamera()->SetWindowCenter(eye.centre_x, eye.centre_y);
}

Eye between(const Eye& from, const Eye& to, double share) {
  Eye eye;
  eye.gaze = between(from.gaze, to.gaze, share);
  eye.focus = from.focus + share * (to.focus - from.focus);
  eye.scale = from.scale * std::pow(to.scale / from.scale, share);
  // By its inverse, which is none of a parallel projection.
  const auto inverse = [](double mm) { return mm > 0 ? 1 / mm : 0; };
  const double nearness = inverse(from.eye_mm) + share * (inverse(to.eye_mm) - inverse(from.eye_mm));
  eye.eye_mm = inverse(nearness);
  eye.centre_x = from.centre_x + share * (to.centre_x - from.centre_x);
  eye.centre_y = from.centre_y + share * (to.centre_y - from.centre_y);
  return eye;
}

}  // namespace scalpmark::window
