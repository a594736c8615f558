#include "models/meshes/thin_scan.h"

#include <OpenMesh/Core/Mesh/TriMesh_ArrayKernelT.hh>
#include <OpenMesh/Tools/Decimater/DecimaterT.hh>
#include <OpenMesh/Tools/Decimater/ModAspectRatioT.hh>
#include <OpenMesh/Tools/Decimater/ModNormalFlippingT.hh>
#include <OpenMesh/Tools/Decimater/ModQuadricT.hh>
#include <algorithm>
#include <array>
#include <optional>

#include "models/meshes/rough_thinning.h"

namespace scalpmark::models {

using Eigen::Vector3d;

namespace {

/// OpenMesh's own defaults are in single precision.
struct Double : OpenMesh::DefaultTraits {
  using Point = OpenMesh::Vec3d;
  using Normal = OpenMesh::Vec3d;
};
using Collapsed = OpenMesh::TriMesh_ArrayKernelT<Double>;
using Decimater = OpenMesh::Decimater::DecimaterT<Collapsed>;

constexpr double most_turn_deg = 50;
/// Longest side over the height on it, beyond which no triangle is made; the second where the first leaves
/// too many.
constexpr std::array<double, 2> most_slender{3.5, 8};

class Teller : public OpenMesh::Decimater::Observer {
public:
  Teller(const std::function<void(double)>& told, std::size_t collapses)
      : Observer(20000), told_(told), collapses_(static_cast<double>(collapses)) {}
  void notify(std::size_t step) override {
    // A second round counts anew; what is told never goes back.
    farthest_ = std::max(farthest_, std::min(1.0, static_cast<double>(step) / collapses_));
    if (told_) told_(farthest_);
  }

private:
  const std::function<void(double)>& told_;
  double collapses_, farthest_ = 0;
};

Collapsed collapsible(const Mesh& mesh) {
  Collapsed made;
  made.reserve(mesh.vertices.size(), mesh.triangles.size() * 3 / 2, mesh.triangles.size());
  for (const Vector3d& v : mesh.vertices) made.add_vertex({v.x(), v.y(), v.z()});
  for (const auto& [a, b, c] : mesh.triangles)
    made.add_face(made.vertex_handle(static_cast<unsigned>(a)), made.vertex_handle(static_cast<unsigned>(b)),
                  made.vertex_handle(static_cast<unsigned>(c)));
  return made;
}

Mesh packed(const Collapsed& mesh) {
  Mesh out;
  std::vector<int> renamed(mesh.n_vertices(), -1);
  for (const auto face : mesh.faces()) {
    geometry::Triangle t{};
    std::size_t k = 0;
    for (const auto v : mesh.fv_range(face)) {
      int& name = renamed[static_cast<std::size_t>(v.idx())];
      if (name < 0) {
        name = static_cast<int>(out.vertices.size());
        const auto& p = mesh.point(v);
        out.vertices.emplace_back(p[0], p[1], p[2]);
      }
      t[k++] = name;
    }
    out.triangles.push_back(t);
  }
  return out;
}

}  // namespace

Mesh thin_scan(const Mesh& mesh, std::size_t most, const std::function<void(double)>& told) {
  // So much is left for care that the outcome is as even as if all had been.
  constexpr std::size_t left_for_care = 2, many_times = 3;
  std::optional<Mesh> rough;
  if (mesh.triangles.size() > many_times * most) rough = thinned_roughly(mesh, left_for_care * most);
  const Mesh& from = rough ? *rough : mesh;
  Collapsed thinned = collapsible(from);
  if (from.triangles.size() > most) {
    thinned.request_vertex_status();
    thinned.request_edge_status();
    thinned.request_face_status();
    thinned.request_face_normals();
    thinned.update_face_normals();
    for (const auto v : thinned.vertices())
      if (thinned.is_boundary(v)) thinned.status(v).set_locked(true);
    Decimater decimater(thinned);
    OpenMesh::Decimater::ModQuadricT<Collapsed>::Handle quadric;
    OpenMesh::Decimater::ModNormalFlippingT<Collapsed>::Handle flipping;
    OpenMesh::Decimater::ModAspectRatioT<Collapsed>::Handle slender;
    decimater.add(quadric);
    decimater.module(quadric).unset_max_err();  // it sets the order; how far the skin moved is measured after
    decimater.add(flipping);
    decimater.module(flipping).set_max_normal_deviation(most_turn_deg);
    decimater.add(slender);
    Teller teller(told, (from.triangles.size() - most) / 2 + 1);  // two triangles go with an edge
    decimater.set_observer(&teller);
    for (const double times : most_slender) {
      decimater.module(slender).set_aspect_ratio(static_cast<float>(times));
      decimater.initialize();
      decimater.decimate_to_faces(0, most);
      thinned.garbage_collection();
      if (thinned.n_faces() <= most) break;
    }
  }
  return packed(thinned);
}

}  // namespace scalpmark::models
