#include "viewer/stage/drawing/coil_drawing.h"

#include <vtkCellArray.h>
#include <vtkIdList.h>
#include <vtkMatrix4x4.h>
#include <vtkPoints.h>
#include <vtkPolyData.h>
#include <vtkPolygon.h>
#include <vtkProperty.h>

#include <cmath>
#include <numbers>

namespace scalpmark::viewer {

using Eigen::Vector2d;
using Eigen::Vector3d;

namespace {

constexpr double casing_opacity = 0.22;
constexpr double windings_opacity = 0.4;

struct Solid {
  vtkNew<vtkPoints> points;
  vtkNew<vtkCellArray> faces;

  vtkIdType point(const Vector2d& p, double z, double bend_deg) {
    const Vector3d at = geometry::bent({p.x(), p.y(), z}, bend_deg);
    return points->InsertNextPoint(at.data());
  }
  void quad(vtkIdType a, vtkIdType b, vtkIdType c, vtkIdType d) { faces->InsertNextCell({a, b, c, d}); }

  vtkNew<vtkPolyData> data() const {
    vtkNew<vtkPolyData> out;
    out->SetPoints(points);
    out->SetPolys(faces);
    return out;
  }
};

/// Triangles over an outline, as corner numbers; empty when it crosses itself.
std::vector<vtkIdType> fill(const std::vector<Vector2d>& outline) {
  vtkNew<vtkPolygon> polygon;
  for (size_t i = 0; i < outline.size(); ++i) {
    polygon->GetPoints()->InsertNextPoint(outline[i].x(), outline[i].y(), 0);
    polygon->GetPointIds()->InsertNextId(static_cast<vtkIdType>(i));
  }
  vtkNew<vtkIdList> triangles;
  if (polygon->Triangulate(triangles) == 0) return {};
  return {triangles->begin(), triangles->end()};
}

void add_part(Solid& solid, const geometry::CoilPart& part) {
  const auto n = static_cast<vtkIdType>(part.outline.size());
  if (n < 3) return;
  const vtkIdType first = solid.points->GetNumberOfPoints();
  for (const auto& p : part.outline) solid.point(p, part.bottom_mm, part.bend_deg);
  for (const auto& p : part.outline) solid.point(p, part.top_mm, part.bend_deg);
  const auto caps = fill(part.outline);
  for (size_t i = 0; i + 2 < caps.size(); i += 3) {
    solid.faces->InsertNextCell({first + n + caps[i], first + n + caps[i + 1], first + n + caps[i + 2]});
    solid.faces->InsertNextCell({first + caps[i], first + caps[i + 2], first + caps[i + 1]});
  }
  for (vtkIdType i = 0; i < n; ++i) {
    const vtkIdType j = (i + 1) % n;
    solid.quad(first + i, first + j, first + n + j, first + n + i);
  }
}

void add_windings(Solid& solid, const geometry::Winding& winding) {
  constexpr int corners = 72;
  const int turns = std::max(1, winding.turns);
  const double pitch = (winding.outer_mm - winding.inner_mm) / 2 / turns;
  for (int t = 0; t < turns; ++t) {
    const double inner = winding.inner_mm / 2 + t * pitch + 0.15 * pitch, outer = inner + 0.7 * pitch;
    const vtkIdType first = solid.points->GetNumberOfPoints();
    for (int i = 0; i < corners; ++i) {
      const double a = 2 * std::numbers::pi * i / corners;
      const Vector2d way(std::cos(a), std::sin(a));
      solid.point(winding.centre + inner * way, winding.height_mm, winding.bend_deg);
      solid.point(winding.centre + outer * way, winding.height_mm, winding.bend_deg);
    }
    for (vtkIdType i = 0; i < corners; ++i) {
      const vtkIdType j = (i + 1) % corners;
      solid.quad(first + 2 * i, first + 2 * i + 1, first + 2 * j + 1, first + 2 * j);
    }
  }
}

void set_colour(vtkProperty* look, Colour c, double opacity) {
  look->SetColor(c.red / 255.0, c.green / 255.0, c.blue / 255.0);
  look->SetOpacity(opacity);
}

bool same(const geometry::Coil& a, const geometry::Coil& b) {
  if (a.parts.size() != b.parts.size() || a.windings.size() != b.windings.size()) return false;
  for (size_t i = 0; i < a.parts.size(); ++i)
    if (a.parts[i].outline != b.parts[i].outline || a.parts[i].bottom_mm != b.parts[i].bottom_mm ||
        a.parts[i].bend_deg != b.parts[i].bend_deg || a.parts[i].top_mm != b.parts[i].top_mm)
      return false;
  for (size_t i = 0; i < a.windings.size(); ++i)
    if (a.windings[i].centre != b.windings[i].centre || a.windings[i].inner_mm != b.windings[i].inner_mm ||
        a.windings[i].bend_deg != b.windings[i].bend_deg ||
        a.windings[i].height_mm != b.windings[i].height_mm ||
        a.windings[i].outer_mm != b.windings[i].outer_mm || a.windings[i].turns != b.windings[i].turns)
      return false;
  return true;
}

}  // namespace

CoilDrawing::CoilDrawing(vtkRenderer* renderer) : renderer_(renderer) {
  windings_->SetMapper(windings_mapper_);
  casing_->SetMapper(casing_mapper_);
  set_colour(windings_->GetProperty(), palette::windings, windings_opacity);
  windings_->GetProperty()->LightingOff();
  set_colour(casing_->GetProperty(), palette::casing, casing_opacity);
  casing_->GetProperty()->SetAmbient(0.5);
  casing_->GetProperty()->SetDiffuse(0.5);
  casing_->GetProperty()->SetInterpolationToFlat();
  // Only the sides that face the eye: one layer of casing, so no sorting of translucent faces is needed. The
  // windings come before it.
  casing_->GetProperty()->BackfaceCullingOn();
  windings_->PickableOff();
  casing_->PickableOff();
  renderer->AddActor(windings_);
  renderer->AddActor(casing_);
}

void CoilDrawing::draw_last() {
  for (vtkActor* actor : {windings_.Get(), casing_.Get()}) {
    renderer_->RemoveActor(actor);
    renderer_->AddActor(actor);
  }
}

void CoilDrawing::build(const geometry::Coil& coil) {
  Solid windings, casing;
  for (const auto& w : coil.windings) add_windings(windings, w);
  for (const auto& part : coil.parts) add_part(casing, part);
  windings_mapper_->SetInputData(windings.data());
  casing_mapper_->SetInputData(casing.data());
  built_ = coil;
}

void CoilDrawing::show(const std::optional<CoilBody>& body) {
  const bool shown = body && body->filled;
  for (vtkActor* actor : {windings_.Get(), casing_.Get()}) actor->SetVisibility(shown);
  if (!shown) return;
  if (!built_ || !same(body->coil, *built_)) build(body->coil);
  windings_->GetProperty()->SetOpacity(body->solid ? 1 : windings_opacity);
  casing_->GetProperty()->SetOpacity(body->solid ? 1 : casing_opacity);
  vtkNew<vtkMatrix4x4> matrix;
  for (int r = 0; r < 3; ++r) {
    matrix->SetElement(r, 0, body->right[r]);
    matrix->SetElement(r, 1, body->front[r]);
    matrix->SetElement(r, 2, body->normal[r]);
    matrix->SetElement(r, 3, body->origin[r]);
  }
  for (vtkActor* actor : {windings_.Get(), casing_.Get()}) actor->SetUserMatrix(matrix);
}

}  // namespace scalpmark::viewer
