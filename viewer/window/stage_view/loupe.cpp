#include "viewer/window/stage_view/loupe.h"

#include <vtkCamera.h>

#include <algorithm>

#include "viewer/stage/drawing/aim.h"
#include "viewer/stage/drawing/skin_mesh.h"
#include "viewer/stage/scene/palette.h"
#include "viewer/window/stage_view/bare_skin.h"

namespace scalpmark::window {

using Eigen::Vector3d;

namespace {

constexpr double side_share = 0.34;  // of the stage's shorter side
constexpr double rim_share = 0.015;

/// Faces that reach into a cube around a point.
std::vector<int> faces_near(const geometry::Surface& skin, const Vector3d& at, double reach_mm) {
  std::vector<int> faces;
  const Vector3d low = at.array() - reach_mm, high = at.array() + reach_mm;
  const auto meets = [&](const Vector3d& from, const Vector3d& to) {
    return (from.array() <= high.array()).all() && (to.array() >= low.array()).all();
  };
  skin.visit(meets, [&](int face) {
    const Vector3d &a = skin.corner(face, 0), &b = skin.corner(face, 1), &c = skin.corner(face, 2);
    if (meets(a.cwiseMin(b).cwiseMin(c), a.cwiseMax(b).cwiseMax(c))) faces.push_back(face);
  });
  return faces;
}

}  // namespace

Loupe::Loupe(vtkRenderWindow* window) : window_(window) {
  const viewer::Colour ground = viewer::palette::background;
  renderer_->SetBackground(ground.red / 255.0, ground.green / 255.0, ground.blue / 255.0);
  renderer_->UseFXAAOn();
  actor_->SetMapper(mapper_);
  set_bare_look(*actor_->GetProperty());
  renderer_->AddActor(actor_);
}

void Loupe::show(const geometry::Surface& skin, const Vector3d& at, const viewer::Gaze& gaze,
                 bool on_the_left) {
  if (!at_) window_->AddRenderer(renderer_);
  at_ = at;
  on_the_left_ = on_the_left;
  // The corners of a square picture are further out than its middles.
  mapper_->SetInputData(viewer::skin_mesh(skin, faces_near(skin, at, 0.75 * across_mm)));
  const QRectF place = this->place();
  renderer_->SetViewport(place.left(), 1 - place.bottom(), place.right(), 1 - place.top());
  viewer::aim(*renderer_, at, gaze, across_mm / 2);
}

void Loupe::hide() {
  if (!at_) return;
  window_->RemoveRenderer(renderer_);
  at_.reset();
}

QRectF Loupe::place() const {
  const int* size = window_->GetSize();
  const double width = std::max(1, size[0]), height = std::max(1, size[1]);
  const double side = side_share * std::min(width, height), rim = rim_share * std::min(width, height);
  const double left = on_the_left_ ? rim : width - rim - side;
  return {left / width, (height - rim - side) / height, side / width, side / height};
}

}  // namespace scalpmark::window
