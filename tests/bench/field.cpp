// The induced field at 2000 places of a cortex, one core, against a direct sum over 384 small loops a turn
// (each by reciprocity from a dipole's magnetic field in a sphere, Sarvas 1987). Part of bench_kernel.
#include <benchmark/benchmark.h>

#include <Eigen/Geometry>
#include <cmath>
#include <vector>

#include "geometry/base/angles.h"
#include "geometry/field/coil_field.h"
#include "geometry/plan/solve.h"
#include "models/brain/template_brain.h"
#include "models/coils/coil_library.h"
#include "tests/support/template_head.h"

using namespace scalpmark;
using namespace scalpmark::geometry;
using Eigen::Vector3d;

namespace {

constexpr int places = 2000;

struct Laid {
  Case the_case;
  Placement treatment;
  RoundHead round;
  std::vector<Turn> turns;
  std::vector<Vector3d> cortex;
};

/// On the template head, the treatment of the default case; places on the sphere 20 mm under its skin.
const Laid& laid() {
  static const Laid made = [] {
    Laid l;
    l.the_case.coil.model = models::coil("figure-8-70");
    const Head& head = tests::template_head();
    l.treatment = solve(head, l.the_case, TapeDistances::left_out).treatment;
    l.round = round_head(head.skin(), l.treatment.pulse);
    const CoilPose pose = l.treatment.pose().pose;
    l.turns = turns_of(l.the_case.coil.model, frame_of(pose, l.treatment.lift_mm));
    l.cortex = sheet_on_sphere(l.round, pose, l.round.radius_mm - sheet_depth_mm, 2.5).at;
    l.cortex.resize(places);
    return l;
  }();
  return made;
}

/// Rings of even area, 16 by 24.
Vector3d by_loops(const Vector3d& centre, const std::vector<Turn>& turns, const Vector3d& point) {
  constexpr int rings = 16, around = 24;
  const Vector3d r = point - centre;
  Vector3d sum = Vector3d::Zero();
  for (const Turn& t : turns) {
    const Vector3d n = t.along.cross(t.across);
    const double area = pi * t.radius_mm * t.radius_mm / (rings * around);
    for (int i = 0; i < rings; ++i)
      for (int j = 0; j < around; ++j) {
        const double rho = t.radius_mm * std::sqrt((i + 0.5) / rings), a = 2 * pi * (j + 0.5) / around;
        const Vector3d at = t.centre - centre + rho * (std::cos(a) * t.along + std::sin(a) * t.across);
        const Vector3d away = at - r;
        const double near = away.norm(), far = at.norm(), F = near * (far * near + far * far - r.dot(at));
        const double along = away.dot(at) / near;
        const Vector3d slope =
            (near * near / far + along + 2 * near + 2 * far) * at - (near + 2 * far + along) * r;
        sum -= area * (F * r.cross(n) - slope.dot(n) * r.cross(at)) / (F * F);
      }
  }
  return 0.1 * sum;
}

void field_at_2000_places(benchmark::State& state) {
  const Laid& l = laid();
  for (auto _ : state) {
    const SphereField field(l.round.centre, l.turns);
    Vector3d sum = Vector3d::Zero();
    for (const Vector3d& p : l.cortex) sum += field.at(p);
    benchmark::DoNotOptimize(sum);
  }
}
BENCHMARK(field_at_2000_places)->Unit(benchmark::kMillisecond);

void field_by_384_loops_a_turn(benchmark::State& state) {
  const Laid& l = laid();
  const SphereField field(l.round.centre, l.turns);
  double worst = 0, strongest = 0;
  for (auto _ : state)
    for (const Vector3d& p : l.cortex) {
      const Vector3d e = by_loops(l.round.centre, l.turns, p);
      worst = std::max(worst, (e - field.at(p)).norm());
      strongest = std::max(strongest, e.norm());
    }
  state.counters["off_by"] = worst / strongest;
}
BENCHMARK(field_by_384_loops_a_turn)->Unit(benchmark::kMillisecond);

/// All that follows a dragged coil: the sphere fitted, the sheet, its field, patches and curve.
void coil_field_on_sphere(benchmark::State& state) {
  const Laid& l = laid();
  for (auto _ : state)
    benchmark::DoNotOptimize(
        coil_field(tests::template_head().skin(), nullptr, l.the_case.coil.model, l.treatment));
}
BENCHMARK(coil_field_on_sphere)->Unit(benchmark::kMillisecond);

void coil_field_on_brain(benchmark::State& state) {
  static const auto cortex =
      std::make_shared<const Cortex>(models::load_template_brain().brain, tests::template_head());
  const Laid& l = laid();
  for (auto _ : state)
    benchmark::DoNotOptimize(
        coil_field(tests::template_head().skin(), cortex.get(), l.the_case.coil.model, l.treatment));
}
BENCHMARK(coil_field_on_brain)->Unit(benchmark::kMillisecond);

}  // namespace
