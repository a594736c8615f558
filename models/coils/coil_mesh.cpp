#include "models/coils/coil_mesh.h"

#include <vtkIdList.h>
#include <vtkNew.h>
#include <vtkPoints.h>
#include <vtkPolygon.h>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace scalpmark::models {

using Eigen::Vector2d;

namespace {

/// Triangles over an outline, as corner numbers; empty where it crosses itself.
std::vector<geometry::Triangle> filled(const std::vector<Vector2d>& outline) {
  vtkNew<vtkPolygon> polygon;
  for (std::size_t i = 0; i < outline.size(); ++i) {
    polygon->GetPoints()->InsertNextPoint(outline[i].x(), outline[i].y(), 0);
    polygon->GetPointIds()->InsertNextId(static_cast<vtkIdType>(i));
  }
  vtkNew<vtkIdList> corners;
  if (polygon->Triangulate(corners) == 0) return {};
  std::vector<geometry::Triangle> triangles;
  for (vtkIdType i = 0; i + 2 < corners->GetNumberOfIds(); i += 3)
    triangles.push_back({static_cast<int>(corners->GetId(i)), static_cast<int>(corners->GetId(i + 1)),
                         static_cast<int>(corners->GetId(i + 2))});
  return triangles;
}

void add_slab(Mesh& mesh, const geometry::CoilPart& part) {
  const int n = static_cast<int>(part.outline.size());
  if (n < 3) return;
  const int low = static_cast<int>(mesh.vertices.size()), high = low + n;
  for (const double z : {part.bottom_mm, part.top_mm})
    for (const Vector2d& p : part.outline)
      mesh.vertices.push_back(geometry::bent({p.x(), p.y(), z}, part.bend_deg));
  for (const auto& t : filled(part.outline)) {
    mesh.triangles.push_back({high + t[0], high + t[1], high + t[2]});
    mesh.triangles.push_back({low + t[0], low + t[2], low + t[1]});
  }
  for (int i = 0; i < n; ++i) {
    const int j = (i + 1) % n;
    mesh.triangles.push_back({low + i, low + j, high + j});
    mesh.triangles.push_back({low + i, high + j, high + i});
  }
}

void add_rings(Mesh& mesh, const geometry::Winding& winding) {
  constexpr int corners = 72;
  constexpr double wire_share = 0.7;  // of the room each turn has
  const int turns = std::max(1, winding.turns);
  const double room = (winding.outer_mm - winding.inner_mm) / 2 / turns;
  for (int t = 0; t < turns; ++t) {
    const double inner = winding.inner_mm / 2 + (t + 0.5 * (1 - wire_share)) * room,
                 outer = inner + wire_share * room;
    const int first = static_cast<int>(mesh.vertices.size());
    for (int i = 0; i < corners; ++i) {
      const double a = 2 * std::numbers::pi * i / corners;
      for (const double r : {inner, outer}) {
        const Vector2d p = winding.centre + r * Vector2d(std::cos(a), std::sin(a));
        mesh.vertices.push_back(geometry::bent({p.x(), p.y(), winding.height_mm}, winding.bend_deg));
      }
    }
    for (int i = 0; i < corners; ++i) {
      const int a = first + 2 * i, b = first + 2 * ((i + 1) % corners);
      mesh.triangles.push_back({a, a + 1, b + 1});
      mesh.triangles.push_back({a, b + 1, b});
    }
  }
}

}  // namespace

Mesh casing_mesh(const geometry::Coil& coil) {
  Mesh mesh;
  for (const auto& part : coil.parts) add_slab(mesh, part);
  return mesh;
}

Mesh windings_mesh(const geometry::Coil& coil) {
  Mesh mesh;
  for (const auto& winding : coil.windings) add_rings(mesh, winding);
  return mesh;
}

}  // namespace scalpmark::models
