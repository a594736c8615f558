#include "viewer/stage/drawing/skin_mesh.h"

#include <vtkCellArray.h>
#include <vtkFloatArray.h>
#include <vtkNew.h>
#include <vtkPointData.h>
#include <vtkPoints.h>
#include <vtkUnsignedCharArray.h>

#include <numeric>
#include <unordered_map>

#include "models/meshes/thin_triangles.h"

namespace scalpmark::viewer {

namespace {

vtkSmartPointer<vtkPolyData> mesh(const geometry::Surface& skin, const std::vector<int>& corners,
                                  vtkCellArray* faces) {
  vtkNew<vtkPoints> points;
  vtkNew<vtkFloatArray> normals;
  const auto count = static_cast<vtkIdType>(corners.size());
  normals->SetNumberOfComponents(3);
  normals->SetNumberOfTuples(count);
  points->SetNumberOfPoints(count);
  for (vtkIdType i = 0; i < count; ++i) {
    const auto v = static_cast<std::size_t>(corners[static_cast<std::size_t>(i)]);
    points->SetPoint(i, skin.vertices()[v].data());
    normals->SetTuple(i, skin.vertex_normals()[v].data());
  }
  auto data = vtkSmartPointer<vtkPolyData>::New();
  data->SetPoints(points);
  data->SetPolys(faces);
  data->GetPointData()->SetNormals(normals);
  return data;
}

}  // namespace

vtkSmartPointer<vtkPolyData> skin_mesh(const geometry::Surface& skin) {
  std::vector<int> corners(skin.vertices().size());
  std::iota(corners.begin(), corners.end(), 0);
  const auto count = static_cast<vtkIdType>(skin.triangles().size());
  vtkNew<vtkCellArray> faces;
  faces->Use32BitStorage();  // half the memory of VTK's usual numbers
  faces->AllocateExact(count, 3 * count);
  for (const auto& [a, b, c] : skin.triangles())
    faces->InsertNextCell({vtkIdType{a}, vtkIdType{b}, vtkIdType{c}});
  return mesh(skin, corners, faces);
}

vtkSmartPointer<vtkPolyData> skin_mesh(const geometry::Surface& skin, const std::vector<int>& some,
                                       vtkUnsignedCharArray* colours) {
  std::vector<int> corners;
  std::unordered_map<int, vtkIdType> numbers;
  vtkNew<vtkCellArray> faces;
  for (const int face : some) {
    faces->InsertNextCell(3);
    for (const int corner : skin.triangle(face)) {
      const auto [known, fresh] = numbers.try_emplace(corner, static_cast<vtkIdType>(corners.size()));
      if (fresh) corners.push_back(corner);
      faces->InsertCellPoint(known->second);
    }
  }
  auto data = mesh(skin, corners, faces);
  if (colours == nullptr) return data;
  vtkNew<vtkUnsignedCharArray> of_some;
  of_some->SetNumberOfComponents(colours->GetNumberOfComponents());
  for (const int corner : corners) of_some->InsertNextTuple(corner, colours);
  data->GetPointData()->SetScalars(of_some);
  return data;
}

std::optional<geometry::Surface> thin_skin(const geometry::Surface& skin) {
  constexpr std::size_t drawn_at_most = 16000;
  if (skin.triangles().size() <= drawn_at_most || !skin.is_closed()) return {};
  models::Mesh thin = models::thin_triangles({skin.vertices(), skin.triangles()}, drawn_at_most);
  geometry::Surface made(std::move(thin.vertices), std::move(thin.triangles));
  (void)made.vertex_normals();
  return made;
}

}  // namespace scalpmark::viewer
