#pragma once

#include <CGAL/Simple_cartesian.h>
#include <CGAL/Surface_mesh.h>
#include <CGAL/Surface_mesh_shortest_path.h>

#include "geometry/surface/surface.h"

namespace scalpmark::tests {

/// A skin as CGAL's package "Triangulated Surface Mesh Shortest Paths" takes it (CGAL 5.5, Debian
/// libcgal-dev).
using CgalKernel = CGAL::Simple_cartesian<double>;
using CgalMesh = CGAL::Surface_mesh<CgalKernel::Point_3>;
using CgalPaths =
    CGAL::Surface_mesh_shortest_path<CGAL::Surface_mesh_shortest_path_traits<CgalKernel, CgalMesh>>;

inline CgalMesh cgal_mesh(const geometry::Surface& skin) {
  CgalMesh mesh;
  for (const auto& v : skin.vertices()) mesh.add_vertex({v.x(), v.y(), v.z()});
  const auto index = [](int v) { return CgalMesh::Vertex_index(static_cast<unsigned>(v)); };
  for (const auto& [a, b, c] : skin.triangles()) mesh.add_face(index(a), index(b), index(c));
  return mesh;
}

}  // namespace scalpmark::tests
