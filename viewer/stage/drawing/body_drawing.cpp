#include "viewer/stage/drawing/body_drawing.h"

#include <vtkPointData.h>
#include <vtkProperty.h>
#include <vtkUnsignedCharArray.h>

#include <algorithm>
#include <cmath>

#include "viewer/stage/drawing/skin_mesh.h"

namespace scalpmark::viewer {

namespace {

Colour mixed(Colour a, Colour b, double share_of_b) {
  const auto mix = [&](std::uint8_t x, std::uint8_t y) {
    return static_cast<std::uint8_t>(std::lround((1 - share_of_b) * x + share_of_b * y));
  };
  return {mix(a.red, b.red), mix(a.green, b.green), mix(a.blue, b.blue)};
}

bool same(const std::optional<Glow>& a, const std::optional<Glow>& b) {
  if (!a || !b) return !a && !b;
  return a->at == b->at && a->radius_mm == b->radius_mm && a->role == b->role && a->corners == b->corners;
}

}  // namespace

BodyDrawing::BodyDrawing(vtkRenderer* renderer) : renderer_(renderer) {
  actor_->SetMapper(mapper_);
  auto* look = actor_->GetProperty();
  look->SetInterpolationToPhong();
  look->SetSpecular(0);
  thin_actor_->SetMapper(thin_mapper_);
  thin_actor_->SetProperty(look);
  thin_actor_->PickableOff();
  renderer->AddActor(actor_);
  renderer->AddActor(thin_actor_);
  choose();
}

void BodyDrawing::draw_last() {
  for (vtkActor* actor : {static_cast<vtkActor*>(actor_.Get()), static_cast<vtkActor*>(thin_actor_.Get())}) {
    renderer_->RemoveActor(actor);
    renderer_->AddActor(actor);
  }
}

void BodyDrawing::choose() {
  actor_->SetVisibility(shown_ && !draws_thin());
  thin_actor_->SetVisibility(shown_ && draws_thin());
}

void BodyDrawing::set_thin(const std::optional<geometry::Surface>& thin) {
  const bool known = thin && thin_ ? same_surface(*thin, *thin_) : !thin && !thin_;
  if (known) return;
  thin_ = thin;
  if (thin_) thin_mapper_->SetInputData(skin_mesh(*thin_));
  choose();
}

void BodyDrawing::set_moving(bool moving) {
  moving_ = moving;
  choose();
}

void BodyDrawing::show(const std::optional<Body>& body, bool pickable) {
  shown_ = body.has_value();
  choose();
  if (!body) return;
  auto* look = actor_->GetProperty();
  const Colour c = colour_of(body->role);
  look->SetColor(c.red / 255.0, c.green / 255.0, c.blue / 255.0);
  look->SetAmbient(body->ambient);
  look->SetDiffuse(body->diffuse);
  look->SetOpacity(body->opacity);
  // Of what is looked through, only the near side: the far one would lie as a second veil over what is
  // inside.
  look->SetBackfaceCulling(body->opacity < 1);
  actor_->SetPickable(pickable);
  const bool known = drawn_ && same_surface(*drawn_, body->surface);
  if (!known) {
    drawn_ = body->surface;
    data_ = skin_mesh(body->surface);
    mapper_->SetInputData(data_);
    glow_.reset();
  }
  if (!same(glow_, body->glow)) light(*body);
}

void BodyDrawing::light(const Body& body) {
  glow_ = body.glow;
  if (!body.glow) {
    data_->GetPointData()->SetScalars(nullptr);
    data_->Modified();
    return;
  }
  const Colour plain = colour_of(body.role), lit = colour_of(body.glow->role);
  const auto& corners = body.surface.vertices();
  vtkNew<vtkUnsignedCharArray> colours;
  colours->SetNumberOfComponents(3);
  colours->SetNumberOfTuples(static_cast<vtkIdType>(corners.size()));
  const auto set = [&](size_t i, Colour c) {
    colours->SetTypedComponent(static_cast<vtkIdType>(i), 0, c.red);
    colours->SetTypedComponent(static_cast<vtkIdType>(i), 1, c.green);
    colours->SetTypedComponent(static_cast<vtkIdType>(i), 2, c.blue);
  };
  const auto& by_corner = body.glow->corners;
  for (size_t i = 0; i < corners.size(); ++i) {
    const double away = by_corner ? 1 : (corners[i] - body.glow->at).norm() / body.glow->radius_mm;
    set(i, away < 1 ? mixed(plain, lit, std::min(1.0, 1.6 * (1 - away * away))) : plain);
  }
  if (by_corner)
    for (const LitCorner& c : *by_corner) set(static_cast<size_t>(c.corner), mixed(plain, lit, c.share));
  data_->GetPointData()->SetScalars(colours);
  data_->Modified();
}

}  // namespace scalpmark::viewer
