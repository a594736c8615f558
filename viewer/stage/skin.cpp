#include "viewer/stage/skin.h"

#include <vtkCellArray.h>
#include <vtkFloatArray.h>
#include <vtkPointData.h>
#include <vtkPoints.h>
#include <vtkPolyData.h>
#include <vtkProperty.h>

#include "viewer/palette.h"

namespace scalpmark::viewer {

namespace {

vtkNew<vtkPolyData> triangles_of(const geometry::Surface& skin) {
  vtkNew<vtkPolyData> data;
  vtkNew<vtkPoints> points;
  vtkNew<vtkFloatArray> normals;
  normals->SetNumberOfComponents(3);
  points->SetNumberOfPoints(static_cast<vtkIdType>(skin.vertices().size()));
  normals->SetNumberOfTuples(static_cast<vtkIdType>(skin.vertices().size()));
  for (size_t i = 0; i < skin.vertices().size(); ++i) {
    points->SetPoint(static_cast<vtkIdType>(i), skin.vertices()[i].data());
    normals->SetTuple(static_cast<vtkIdType>(i), skin.vertex_normals()[i].data());
  }
  vtkNew<vtkCellArray> faces;
  faces->AllocateExact(static_cast<vtkIdType>(skin.triangles().size()),
                       3 * static_cast<vtkIdType>(skin.triangles().size()));
  for (const auto& [a, b, c] : skin.triangles())
    faces->InsertNextCell({vtkIdType{a}, vtkIdType{b}, vtkIdType{c}});
  data->SetPoints(points);
  data->SetPolys(faces);
  data->GetPointData()->SetNormals(normals);
  return data;
}

}  // namespace

Skin::Skin(vtkRenderer* renderer) {
  actor_->SetMapper(mapper_);
  auto* look = actor_->GetProperty();
  look->SetInterpolationToPhong();
  look->SetColor(palette::skin.red / 255.0, palette::skin.green / 255.0, palette::skin.blue / 255.0);
  look->SetAmbient(0.46);
  look->SetDiffuse(0.56);
  look->SetSpecular(0);
  renderer->AddActor(actor_);
}

void Skin::show(const geometry::Head& head, const Shown& shown) {
  actor_->SetVisibility(shown.has(Thing::skin));
  actor_->GetProperty()->SetOpacity(shown.skin_opacity);
  // Copies of a surface share their vertices, so their address tells whether this head is already drawn.
  if (drawn_ && &drawn_->vertices() == &head.skin().vertices()) return;
  drawn_ = head.skin();
  mapper_->SetInputData(triangles_of(*drawn_));
}

}  // namespace scalpmark::viewer
