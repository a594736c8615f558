#include "models/exports/closed_skin.h"

#include <vtkCellArray.h>
#include <vtkClipClosedSurface.h>
#include <vtkIdList.h>
#include <vtkNew.h>
#include <vtkPlane.h>
#include <vtkPlaneCollection.h>
#include <vtkPoints.h>
#include <vtkPolyData.h>
#include <vtkTriangleFilter.h>

#include "geometry/base/index.h"
#include "models/files/error.h"
#include "models/meshes/close_vertices.h"
#include "models/meshes/mesh_pieces.h"

namespace scalpmark::models {

using Eigen::Vector3d;
using geometry::at;
using geometry::Message;

namespace {

/// Whether a triangle runs from one corner of the border to the next.
bool runs_from_to(const geometry::Surface& skin, int from, int to) {
  for (const int f : skin.faces_around(from))
    for (std::size_t k = 0; k < 3; ++k)
      if (skin.triangle(f)[k] == from && skin.triangle(f)[(k + 1) % 3] == to) return true;
  return false;
}

vtkNew<vtkPolyData> as_poly_data(const Mesh& mesh) {
  vtkNew<vtkPoints> points;
  points->SetDataTypeToDouble();
  for (const Vector3d& v : mesh.vertices) points->InsertNextPoint(v.data());
  vtkNew<vtkCellArray> faces;
  for (const auto& t : mesh.triangles) faces->InsertNextCell({t[0], t[1], t[2]});
  vtkNew<vtkPolyData> data;
  data->SetPoints(points);
  data->SetPolys(faces);
  return data;
}

Mesh as_mesh(vtkPolyData& data) {
  Mesh mesh;
  for (vtkIdType i = 0; i < data.GetNumberOfPoints(); ++i) {
    Vector3d p;
    data.GetPoint(i, p.data());
    mesh.vertices.push_back(p);
  }
  vtkNew<vtkIdList> cell;
  vtkCellArray* faces = data.GetPolys();
  for (faces->InitTraversal(); faces->GetNextCell(cell) != 0;)
    if (cell->GetNumberOfIds() == 3)
      mesh.triangles.push_back({static_cast<int>(cell->GetId(0)), static_cast<int>(cell->GetId(1)),
                                static_cast<int>(cell->GetId(2))});
  return mesh;
}

}  // namespace

Mesh closed_skin(const geometry::Surface& skin) {
  Mesh mesh{skin.vertices(), skin.triangles()};
  for (const auto& loop : skin.borders()) {
    Vector3d middle = Vector3d::Zero();
    for (const int v : loop) middle += skin.vertex(v) / static_cast<double>(loop.size());
    const int centre = static_cast<int>(mesh.vertices.size());
    mesh.vertices.push_back(middle);
    const bool along = runs_from_to(skin, loop[0], loop[1]);
    for (std::size_t i = 0; i < loop.size(); ++i) {
      const int a = loop[i], b = loop[(i + 1) % loop.size()];
      mesh.triangles.push_back(along ? geometry::Triangle{b, a, centre} : geometry::Triangle{a, b, centre});
    }
  }
  return mesh;
}

Mesh cut_flat(const Mesh& closed, const Vector3d& on_plane, const Vector3d& up) {
  vtkNew<vtkPlane> plane;
  plane->SetOrigin(on_plane.x(), on_plane.y(), on_plane.z());
  plane->SetNormal(up.x(), up.y(), up.z());
  vtkNew<vtkPlaneCollection> planes;
  planes->AddItem(plane);
  const auto data = as_poly_data(closed);
  vtkNew<vtkClipClosedSurface> clip;
  clip->SetInputData(data);
  clip->SetClippingPlanes(planes);
  clip->SetScalarModeToNone();
  clip->GenerateFacesOn();
  vtkNew<vtkTriangleFilter> triangles;
  triangles->SetInputConnection(clip->GetOutputPort());
  triangles->PassLinesOff();
  triangles->PassVertsOff();
  triangles->Update();
  Mesh mesh = as_mesh(*triangles->GetOutput());
  merge_close_vertices(mesh, close_mm);
  if (mesh.triangles.empty() || mesh.triangles.size() == closed.triangles.size())
    throw ModelError(Message::of(
        "Cut flat at this height nothing is cut off the head, or all of it; choose another height."));
  Mesh kept = largest_piece(mesh).mesh;
  drop_unused_vertices(kept);
  return kept;
}

}  // namespace scalpmark::models
