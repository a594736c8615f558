#include "models/mri/volume_surface.h"

#include <vtkCellArray.h>
#include <vtkFloatArray.h>
#include <vtkFlyingEdges3D.h>
#include <vtkImageData.h>
#include <vtkNew.h>
#include <vtkPointData.h>
#include <vtkPolyData.h>

#include <Eigen/Geometry>
#include <algorithm>
#include <array>

#include "geometry/base/error.h"
#include "geometry/base/index.h"
#include "models/files/error.h"
#include "models/meshes/disjoint_sets.h"
#include "models/meshes/sidedness.h"
#include "models/meshes/thin_triangles.h"
#include "models/mri/air_boundary.h"

namespace scalpmark::models {

using Eigen::Vector3d;

using geometry::at;

namespace {

/// The contour in world mm (flying edges, Schroeder et al. 2015), triangles as they come.
Mesh contour(AirBoundary& boundary) {
  Volume& block = boundary.block;
  vtkNew<vtkImageData> image;
  image->SetDimensions(block.size.data());
  vtkNew<vtkFloatArray> values;
  values->SetArray(block.value.data(), static_cast<vtkIdType>(block.value.size()), 1);  // borrowed
  image->GetPointData()->SetScalars(values);
  vtkNew<vtkFlyingEdges3D> edges;
  edges->SetInputData(image);
  edges->SetValue(0, static_cast<double>(boundary.level));
  edges->ComputeNormalsOff();
  edges->ComputeScalarsOff();
  edges->Update();
  vtkPolyData* found = edges->GetOutput();

  Mesh mesh;
  mesh.vertices.resize(static_cast<std::size_t>(found->GetNumberOfPoints()));
  for (std::size_t v = 0; v < mesh.vertices.size(); ++v) {
    Vector3d p;
    found->GetPoint(static_cast<vtkIdType>(v), p.data());
    mesh.vertices[v] = (block.world * p.homogeneous()).head<3>();
  }
  vtkCellArray* cells = found->GetPolys();
  mesh.triangles.reserve(static_cast<std::size_t>(cells->GetNumberOfCells()));
  vtkIdType size = 0;
  const vtkIdType* corners = nullptr;
  for (cells->InitTraversal(); cells->GetNextCell(size, corners) != 0;)
    mesh.triangles.push_back(
        {static_cast<int>(corners[0]), static_cast<int>(corners[1]), static_cast<int>(corners[2])});
  return mesh;
}

/// Only the piece with most triangles: small inner ones can remain where air creeps round a crumb of tissue.
void keep_largest_piece(Mesh& mesh) {
  DisjointSets pieces(mesh.vertices.size());
  for (const auto& t : mesh.triangles) {
    pieces.join(t[1], t[0]);
    pieces.join(t[2], t[0]);
  }
  std::vector<std::size_t> count(mesh.vertices.size(), 0);
  for (const auto& t : mesh.triangles) ++count[at(pieces.of(t[0]))];
  const int best = static_cast<int>(std::max_element(count.begin(), count.end()) - count.begin());
  std::erase_if(mesh.triangles, [&](const auto& t) { return pieces.of(t[0]) != best; });
}

}  // namespace

geometry::Surface surface_of(const Volume& scan, const std::string& name, std::size_t most_triangles,
                             const Progress& progress) {
  const auto say = [&](const Message& what, double fraction) {
    if (progress) progress(what, fraction);
  };
  say(Message::of("finding the air around the head"), 0.0);
  AirBoundary boundary = find_air_boundary(scan, name);
  say(Message::of("drawing the surface"), 0.4);
  Mesh mesh = contour(boundary);
  boundary.block.value = {};
  if (mesh.triangles.empty())
    throw ModelError(Message::of("%1 shows no skin; choose a scan of the whole head.", name));
  keep_largest_piece(mesh);
  if (signed_volume(mesh) < 0)
    for (auto& t : mesh.triangles) std::swap(t[1], t[2]);
  say(Message::of("thinning out the triangles"), 0.5);
  mesh = thin_triangles(std::move(mesh), most_triangles);
  if (mesh.triangles.size() > most_triangles)
    throw ModelError(Message::of(
        "%1 has too rough a surface to be drawn with %2 triangles; smooth or resample it to 1 mm.", name,
        most_triangles));
  say(Message::of("checking the surface"), 0.9);
  try {
    geometry::Surface surface(std::move(mesh.vertices), std::move(mesh.triangles));
    if (!surface.is_closed())
      throw ModelError(Message::of("%1 gave a skin with holes; choose another scan.", name));
    say(Message::of("checking the surface"), 1.0);
    return surface;
  } catch (const geometry::GeometryError& error) {
    throw ModelError(Message::of("%1 gave no usable skin (%2); choose another scan.", name, error.message()));
  }
}

}  // namespace scalpmark::models
