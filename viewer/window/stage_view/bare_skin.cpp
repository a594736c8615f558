#include "viewer/window/stage_view/bare_skin.h"

#include <vtkCamera.h>
#include <vtkCommand.h>
#include <vtkProperty.h>
#include <vtkRenderWindow.h>

#include <algorithm>
#include <cmath>

#include "viewer/stage/drawing/aim.h"
#include "viewer/stage/drawing/skin_mesh.h"
#include "viewer/stage/scene/palette.h"

namespace scalpmark::window {

using Eigen::Vector3d;
using viewer::Pixel;
namespace palette = viewer::palette;

void set_bare_look(vtkProperty& look) {
  const auto share = [](std::uint8_t v) { return v / 255.0; };
  look.SetInterpolationToPhong();
  look.SetColor(share(palette::skin.red), share(palette::skin.green), share(palette::skin.blue));
  look.SetAmbient(0.3);
  look.SetDiffuse(0.7);
  look.SetSpecular(0);
}

BareSkin::BareSkin(vtkRenderer* renderer) : renderer_(renderer), ink_(renderer), overlay_(renderer) {
  const auto share = [](std::uint8_t v) { return v / 255.0; };
  renderer->SetBackground(share(palette::background.red), share(palette::background.green),
                          share(palette::background.blue));
  actor_->SetMapper(mapper_);
  set_bare_look(*actor_->GetProperty());
  renderer->AddActor(actor_);
  renderer->GetActiveCamera()->ParallelProjectionOn();
  observer_ = renderer->AddObserver(vtkCommand::StartEvent, this, &BareSkin::refresh);
}

BareSkin::~BareSkin() {
  renderer_->RemoveObserver(observer_);
}

void BareSkin::show(const UnplacedHead& head) {
  if (!drawn_ || &drawn_->vertices() != &head.skin.vertices()) {
    drawn_ = head.skin;
    mapper_->SetInputData(viewer::skin_mesh(*drawn_));
  }
  placed_ = head.placed;
}

void BareSkin::look(const viewer::Gaze& gaze, const std::optional<Vector3d>& at, double across_mm) {
  if (!drawn_) return;
  const int* size = renderer_->GetRenderWindow()->GetSize();
  const int width = std::max(1, size[0]), height = std::max(1, size[1]);
  const Vector3d right = gaze.up.cross(gaze.toward_eye);
  Eigen::Vector2d low = Eigen::Vector2d::Constant(std::numeric_limits<double>::infinity()), high = -low;
  for (const auto& v : drawn_->vertices()) {
    const Eigen::Vector2d flat(v.dot(right), v.dot(gaze.up));
    low = low.cwiseMin(flat);
    high = high.cwiseMax(flat);
  }
  constexpr double filled = 0.86;  // of the picture, the rest is rim and text
  double mm_per_px =
      std::max((high.x() - low.x()) / (filled * width), (high.y() - low.y()) / (filled * height));
  const Eigen::Vector2d middle = 0.5 * (low + high);
  const Vector3d centre = viewer::vector_of(mapper_->GetInput()->GetCenter());
  Vector3d focus = middle.x() * right + middle.y() * gaze.up + centre.dot(gaze.toward_eye) * gaze.toward_eye;
  if (at && across_mm > 0) {
    focus = *at;
    mm_per_px = across_mm / std::min(width, height);
  }
  viewer::aim(*renderer_, focus, gaze, 0.5 * mm_per_px * height);
}

void BareSkin::refresh() {
  if (!drawn_) return;
  const viewer::Sight s = viewer::sight_of(*renderer_, std::max(1.0, renderer_->GetSize()[1] / 800.0));
  sight_ = s;

  ink_.begin(s);
  overlay_.begin(s);
  for (const Fiducial which : all_fiducials) {
    const auto& at = placed_[static_cast<std::size_t>(which)];
    if (!at) continue;
    viewer::Mark mark;
    mark.shape = viewer::Shape::dot;
    mark.at = *at;
    mark.normal = drawn_->smooth_normal(drawn_->closest(*at));
    mark.along = mark.normal.unitOrthogonal();
    if (!viewer::in_sight(*drawn_, mark.at, mark.normal, s)) continue;
    ink_.spot(*at, 6.5, palette::halo, 2);
    ink_.spot(*at, 4.5, palette::landmark, 2.3);
    const Pixel pixel = s.project(*at);
    overlay_.text(name_of(which).toStdString(), {pixel.x + 12 * s.scale, pixel.y - 9 * s.scale},
                  {15, true, palette::text, true});
  }
  ink_.done();
  overlay_.done();
}

std::optional<geometry::SurfacePoint> BareSkin::skin_at(const Pixel& at) const {
  if (!drawn_) return {};
  return viewer::skin_under(*drawn_, sight_, at);
}

std::optional<Fiducial> BareSkin::point_near(const Pixel& at, double reach_px) const {
  std::optional<Fiducial> best;
  double best_px = reach_px;
  for (const Fiducial which : all_fiducials) {
    const auto& point = placed_[static_cast<std::size_t>(which)];
    // A point on the far side is not taken hold of through the head.
    if (!point || !viewer::in_sight(*drawn_, *point, drawn_->smooth_normal(drawn_->closest(*point)), sight_))
      continue;
    const Pixel there = sight_.project(*point);
    const double away = std::hypot(there.x - at.x, there.y - at.y);
    if (away <= best_px) {
      best_px = away;
      best = which;
    }
  }
  return best;
}

}  // namespace scalpmark::window
