#include "viewer/stage/surface_data.h"

#include <vtkCellArray.h>
#include <vtkFloatArray.h>
#include <vtkNew.h>
#include <vtkPointData.h>
#include <vtkPoints.h>

namespace scalpmark::viewer {

vtkSmartPointer<vtkPolyData> surface_data(const geometry::Surface& surface) {
  auto data = vtkSmartPointer<vtkPolyData>::New();
  vtkNew<vtkPoints> points;
  vtkNew<vtkFloatArray> normals;
  normals->SetNumberOfComponents(3);
  points->SetNumberOfPoints(static_cast<vtkIdType>(surface.vertices().size()));
  normals->SetNumberOfTuples(static_cast<vtkIdType>(surface.vertices().size()));
  for (size_t i = 0; i < surface.vertices().size(); ++i) {
    points->SetPoint(static_cast<vtkIdType>(i), surface.vertices()[i].data());
    normals->SetTuple(static_cast<vtkIdType>(i), surface.vertex_normals()[i].data());
  }
  vtkNew<vtkCellArray> faces;
  faces->AllocateExact(static_cast<vtkIdType>(surface.triangles().size()),
                       3 * static_cast<vtkIdType>(surface.triangles().size()));
  for (const auto& [a, b, c] : surface.triangles())
    faces->InsertNextCell({vtkIdType{a}, vtkIdType{b}, vtkIdType{c}});
  data->SetPoints(points);
  data->SetPolys(faces);
  data->GetPointData()->SetNormals(normals);
  return data;
}

}  // namespace scalpmark::viewer
