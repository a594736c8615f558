// Our shortest paths against CGAL's exact ones and VTK's Dijkstra along the edges, in the same run, on the
// template head thinned to 20 000 triangles (CGAL keeps every window it makes: gigabytes on the full skin).
// Lengths from one point to twenty others; worst_mm and mean_mm are against CGAL's. Run by hand:
// scripts/bench.
#include <benchmark/benchmark.h>
#include <vtkCellArray.h>
#include <vtkDijkstraGraphGeodesicPath.h>
#include <vtkDoubleArray.h>
#include <vtkNew.h>
#include <vtkPoints.h>
#include <vtkPolyData.h>

#include <algorithm>
#include <random>

#include "geometry/paths/distance_field.h"
#include "geometry/paths/shortest_path.h"
#include "models/meshes/thin_triangles.h"
#include "tests/support/cgal_mesh.h"
#include "tests/support/template_head.h"

using namespace scalpmark;
using geometry::Surface;
using geometry::SurfacePoint;

namespace {

// At vertices: Dijkstra knows no other points.
int vertex_of(const Surface& skin, const SurfacePoint& p) {
  int k = 0;
  p.weights.maxCoeff(&k);
  return skin.triangle(p.face)[static_cast<size_t>(k)];
}

struct Task {
  Surface skin;
  SurfacePoint from;
  std::vector<SurfacePoint> to;
};

const Task& task() {
  static const Task made = [] {
    const Surface& full = tests::template_head().skin();
    auto thin = models::thin_triangles({full.vertices(), full.triangles()}, 20000);
    Task t{{std::move(thin.vertices), std::move(thin.triangles)}, {}, {}};
    std::mt19937 random(5);
    std::uniform_int_distribution<int> face(0, static_cast<int>(t.skin.triangles().size()) - 1);
    const auto at_corner = [&] { return SurfacePoint{face(random), {1, 0, 0}}; };
    t.from = at_corner();
    for (int i = 0; i < 20; ++i) t.to.push_back(at_corner());
    return t;
  }();
  return made;
}

std::vector<double> by_cgal() {
  const Task& t = task();
  const tests::CgalMesh mesh = tests::cgal_mesh(t.skin);
  const auto index = [&](const SurfacePoint& p) {
    return tests::CgalMesh::Vertex_index(static_cast<unsigned>(vertex_of(t.skin, p)));
  };
  tests::CgalPaths exact(mesh);
  exact.add_source_point(index(t.from));
  std::vector<double> mm;
  for (const auto& p : t.to) mm.push_back(exact.shortest_distance_to_source_points(index(p)).first);
  return mm;
}

const std::vector<double>& truth() {
  static const std::vector<double> mm = by_cgal();
  return mm;
}

void compare(benchmark::State& state, const std::vector<double>& mm) {
  double worst = 0, sum = 0;
  for (size_t i = 0; i < mm.size(); ++i) {
    const double off = std::abs(mm[i] - truth()[i]);
    worst = std::max(worst, off);
    sum += off;
  }
  state.counters["worst_mm"] = worst;
  state.counters["mean_mm"] = sum / static_cast<double>(mm.size());
}

void lengths_ours(benchmark::State& state) {
  const Task& t = task();
  std::vector<double> mm;
  for (auto _ : state) mm = geometry::shortest_distances(t.skin, t.from, t.to);
  compare(state, mm);
}
BENCHMARK(lengths_ours)->Unit(benchmark::kMillisecond);

void lengths_ours_by_field(benchmark::State& state) {
  const Task& t = task();
  std::vector<double> mm;
  for (auto _ : state) {
    const geometry::DistanceField field(t.skin, t.from);
    mm.clear();
    for (const auto& p : t.to) mm.push_back(field.at(t.skin, p));
  }
  compare(state, mm);
}
BENCHMARK(lengths_ours_by_field)->Unit(benchmark::kMillisecond);

void lengths_cgal(benchmark::State& state) {
  std::vector<double> mm;
  for (auto _ : state) mm = by_cgal();
  compare(state, mm);
}
BENCHMARK(lengths_cgal)->Unit(benchmark::kMillisecond)->Iterations(1);

void lengths_vtk_dijkstra(benchmark::State& state) {
  const Task& t = task();
  vtkNew<vtkPoints> points;
  for (const auto& v : t.skin.vertices()) points->InsertNextPoint(v.data());
  vtkNew<vtkCellArray> faces;
  for (const auto& [a, b, c] : t.skin.triangles()) faces->InsertNextCell({a, b, c});
  vtkNew<vtkPolyData> mesh;
  mesh->SetPoints(points);
  mesh->SetPolys(faces);
  std::vector<double> mm;
  for (auto _ : state) {
    vtkNew<vtkDijkstraGraphGeodesicPath> path;
    path->SetInputData(mesh);
    path->SetStartVertex(vertex_of(t.skin, t.from));
    path->SetEndVertex(vertex_of(t.skin, t.to.front()));
    path->StopWhenEndReachedOff();
    path->Update();
    vtkNew<vtkDoubleArray> all;
    path->GetCumulativeWeights(all);
    mm.clear();
    for (const auto& p : t.to) mm.push_back(all->GetValue(vertex_of(t.skin, p)));
  }
  compare(state, mm);
}
BENCHMARK(lengths_vtk_dijkstra)->Unit(benchmark::kMillisecond);

}  // namespace

BENCHMARK_MAIN();
