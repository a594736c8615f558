#include "viewer/stage/drawing/body_drawing.h"

#include <vtkPointData.h>
#include <vtkPoints.h>
#include <vtkProperty.h>
#include <vtkUnsignedCharArray.h>

#include <algorithm>
#include <cmath>
#include <utility>

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

/// Of each of the body's corners.
vtkNew<vtkUnsignedCharArray> colours_of(const Body& body, const Glow& glow) {
  const Colour plain = colour_of(body.role), lit = colour_of(glow.role);
  const auto& corners = body.surface.vertices();
  vtkNew<vtkUnsignedCharArray> colours;
  colours->SetNumberOfComponents(3);
  colours->SetNumberOfTuples(static_cast<vtkIdType>(corners.size()));
  const auto set = [&](size_t i, Colour c) {
    colours->SetTypedComponent(static_cast<vtkIdType>(i), 0, c.red);
    colours->SetTypedComponent(static_cast<vtkIdType>(i), 1, c.green);
    colours->SetTypedComponent(static_cast<vtkIdType>(i), 2, c.blue);
  };
  const auto& by_corner = glow.corners;
  for (size_t i = 0; i < corners.size(); ++i) {
    const double away = by_corner ? 1 : (corners[i] - glow.at).norm() / glow.radius_mm;
    set(i, away < 1 ? mixed(plain, lit, std::min(1.0, 1.6 * (1 - away * away))) : plain);
  }
  if (by_corner)
    for (const LitCorner& c : *by_corner) set(static_cast<size_t>(c.corner), mixed(plain, lit, c.share));
  return colours;
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
  lit_actor_->SetMapper(lit_mapper_);
  lit_actor_->SetProperty(look);
  lit_actor_->PickableOff();
  lit_actor_->SetVisibility(0);
  renderer->AddActor(lit_actor_);
  choose();
}

void BodyDrawing::draw_last() {
  for (vtkActor* actor :
       {static_cast<vtkActor*>(actor_.Get()), static_cast<vtkActor*>(thin_actor_.Get()), lit_actor_.Get()}) {
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
  if (moving == std::exchange(moving_, moving)) return;
  choose();
  if (body_) show_light();
}

void BodyDrawing::show(const std::optional<Body>& body, bool pickable) {
  shown_ = body.has_value();
  body_ = body;
  choose();
  if (!body) {
    lit_actor_->SetVisibility(0);
    return;
  }
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
    all_.reset();
    apart_.reset();
  }
  show_light();
}

// In motion a light that wanders is drawn over the body, which is not drawn anew for it (blending.h).
void BodyDrawing::show_light() {
  const bool apart = moving_ && body_->glow && !body_->glow->corners;
  const std::optional<Glow> all = apart ? std::nullopt : body_->glow;
  if (!same(all_, all)) {
    all_ = all;
    light_all();
  }
  lit_actor_->SetVisibility(shown_ && apart);
  if (!apart || same(apart_, body_->glow)) return;
  apart_ = body_->glow;
  light_apart();
}

void BodyDrawing::light_all() {
  if (all_)
    data_->GetPointData()->SetScalars(colours_of(*body_, *all_));
  else
    data_->GetPointData()->SetScalars(nullptr);
  data_->Modified();
}

void BodyDrawing::light_apart() {
  const auto& corners = body_->surface.vertices();
  const double reach2 = apart_->radius_mm * apart_->radius_mm;
  const auto is_lit = [&](int corner) {
    return (corners[static_cast<size_t>(corner)] - apart_->at).squaredNorm() < reach2;
  };
  std::vector<int> lit;
  const auto& triangles = body_->surface.triangles();
  for (size_t i = 0; i < triangles.size(); ++i)
    if (std::any_of(triangles[i].begin(), triangles[i].end(), is_lit)) lit.push_back(static_cast<int>(i));
  const auto data = skin_mesh(body_->surface, lit, colours_of(*body_, *apart_));
  // Over the body's own triangles there.
  constexpr double lift_mm = 0.1;
  vtkDataArray* normals = data->GetPointData()->GetNormals();
  for (vtkIdType i = 0; i < data->GetNumberOfPoints(); ++i)
    data->GetPoints()->SetPoint(i, Eigen::Vector3d(Eigen::Vector3d(data->GetPoint(i)) +
                                                   lift_mm * Eigen::Vector3d(normals->GetTuple(i)))
                                       .data());
  lit_mapper_->SetInputData(data);
}

}  // namespace scalpmark::viewer
