#include "viewer/stage/drawing/coil_drawing.h"

#include <vtkCellArray.h>
#include <vtkMatrix4x4.h>
#include <vtkPoints.h>
#include <vtkPolyData.h>
#include <vtkProperty.h>

#include "models/coils/coil_mesh.h"

namespace scalpmark::viewer {

using Eigen::Vector3d;

namespace {

constexpr double casing_opacity = 0.22;
constexpr double windings_opacity = 0.4;

vtkNew<vtkPolyData> drawn_mesh(const models::Mesh& mesh) {
  vtkNew<vtkPoints> points;
  for (const Vector3d& p : mesh.vertices) points->InsertNextPoint(p.data());
  vtkNew<vtkCellArray> faces;
  for (const auto& t : mesh.triangles) faces->InsertNextCell({t[0], t[1], t[2]});
  vtkNew<vtkPolyData> data;
  data->SetPoints(points);
  data->SetPolys(faces);
  return data;
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
  windings_mapper_->SetInputData(drawn_mesh(models::windings_mesh(coil)));
  casing_mapper_->SetInputData(drawn_mesh(models::casing_mesh(coil)));
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
