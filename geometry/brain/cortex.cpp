#include "geometry/brain/cortex.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <optional>

#include "geometry/base/error.h"
#include "geometry/base/index.h"
#include "geometry/base/text.h"
#include "geometry/brain/thin_plate.h"
#include "geometry/head/head.h"
#include "geometry/head/landmarks.h"

namespace scalpmark::geometry {

using Eigen::Vector3d;

namespace {

/// Positions found by construction repeat within about a millimetre, by hand within several; the spline gives
/// so much.
constexpr double slack_mm = 5;
constexpr size_t fewest_shared = 20;

std::vector<Vector3d> mapped(const TemplateBrain& brain, const Head& head) {
  std::vector<Vector3d> from, to;
  for (const Landmark& here : landmarks(head, LandmarkSystem::ten_ten))
    for (const auto& there : brain.landmarks)
      if (there.name == here.name) {
        from.push_back(there.at);
        to.push_back(here.at);
      }
  if (from.size() < fewest_shared)
    throw GeometryError(Message::of(
        "The template brain shares only %1 positions with this head, too few to bring it under the skin.",
        from.size()));
  const ThinPlate map = ThinPlate::fit(from, to, slack_mm);
  std::vector<Vector3d> moved;
  moved.reserve(brain.surface.vertices().size());
  for (const Vector3d& v : brain.surface.vertices()) moved.push_back(map(v));
  return moved;
}

/// Whether a skin point lies on the skin's border, where inside and outside cannot be told.
bool at_border(const Surface& skin, const SurfacePoint& p) {
  if (skin.is_closed()) return false;
  constexpr double on_edge = 1e-9;
  for (int k = 0; k < 3; ++k) {
    if (p.weights[k] > 1 - on_edge && skin.is_border_vertex(skin.triangle(p.face)[at(k)])) return true;
    if (p.weights[(k + 2) % 3] < on_edge && skin.neighbour(p.face, k).face < 0) return true;
  }
  return false;
}

struct Clearance {
  double mm = 0;  // from the skin inward; negative outside
  Vector3d inward = Vector3d::Zero();
};

Clearance clearance(const Surface& skin, const Vector3d& v) {
  const SurfacePoint nearest = skin.closest(v);
  const Vector3d away = v - skin.position(nearest);
  const double mm = away.norm();
  const Vector3d normal = skin.smooth_normal(nearest);
  if (at_border(skin, nearest)) return {mm, mm > 0 ? Vector3d(away / mm) : Vector3d(-normal)};
  if (mm < 1e-9) return {0, -normal};
  return away.dot(normal) < 0 ? Clearance{mm, away / mm} : Clearance{-mm, -away / mm};
}

/// A lower bound of each point's clearance, as far as it is known. Clearance changes by no more than the way
/// gone, so one look at the skin answers for all points around that are far enough from it.
class Bounds {
public:
  Bounds(const Surface& skin, const Surface& brain)
      : skin_(skin), beside_(brain.vertices().size()), at_least_(beside_.size(), unknown) {
    for (const auto& t : brain.triangles())
      for (size_t k = 0; k < 3; ++k) beside_[at(t[k])].push_back(t[(k + 1) % 3]);
  }
  [[nodiscard]] const std::vector<int>& beside(size_t i) const { return beside_[i]; }

  /// The clearance of a point if it may be under `least_mm`; empty when it surely is not.
  std::optional<Clearance> look(const std::vector<Vector3d>& points, size_t i, double least_mm) {
    if (at_least_[i] >= least_mm) return {};
    const Clearance c = clearance(skin_, points[i]);
    at_least_[i] = c.mm;
    std::vector<size_t> waiting{i};
    while (!waiting.empty()) {
      const size_t v = waiting.back();
      waiting.pop_back();
      for (const int u : beside_[v]) {
        const double bound = at_least_[v] - (points[at(u)] - points[v]).norm();
        if (bound < least_mm || at_least_[at(u)] >= least_mm) continue;
        at_least_[at(u)] = bound;
        waiting.push_back(at(u));
      }
    }
    return c;
  }
  void moved(size_t i, double by_mm) { at_least_[i] -= by_mm; }

private:
  static constexpr double unknown = -1e9;
  const Surface& skin_;
  std::vector<std::vector<int>> beside_;
  std::vector<double> at_least_;
};

struct Pushed {
  double most_mm = 0, share = 0;
};

/// Lets what each point is pushed by fade out over its neighbours. Most points are far from any that is
/// pushed and are not looked at.
void fade_out(const Bounds& bounds, std::vector<Vector3d>& push) {
  constexpr int rounds = 12;
  constexpr double fading = 0.9;
  std::vector<double> length(push.size());
  std::vector<size_t> pushed;
  for (size_t i = 0; i < push.size(); ++i) {
    length[i] = push[i].norm();
    if (length[i] > 0) pushed.push_back(i);
  }
  std::vector<int> looked_in(push.size(), -1);
  for (int round = 0; round < rounds; ++round) {
    const std::vector<Vector3d> last = push;
    const std::vector<double> last_length = length;
    for (size_t place = 0, known = pushed.size(); place < known; ++place)
      for (const int beside : bounds.beside(pushed[place])) {
        const size_t i = at(beside);
        if (looked_in[i] == round) continue;
        looked_in[i] = round;
        for (const int j : bounds.beside(i))
          if (fading * last_length[at(j)] > length[i]) {
            push[i] = fading * last[at(j)];
            length[i] = push[i].norm();
          }
        if (last_length[i] == 0 && length[i] > 0) pushed.push_back(i);
      }
  }
}

/// Moves points inward until none is nearer to the skin than it may be. What a point is moved by fades out
/// over its neighbours, so that the push makes a dent and no step.
Pushed push_in(const Surface& skin, const Surface& brain, std::vector<Vector3d>& points) {
  constexpr double target_mm = Cortex::nearest_to_skin_mm + 0.05;
  constexpr int most_rounds = 40;
  Bounds bounds(skin, brain);
  const std::vector<Vector3d> before = points;
  for (int round = 0;; ++round) {
    std::vector<Vector3d> push(points.size(), Vector3d::Zero());
    bool any = false;
    for (size_t i = 0; i < points.size(); ++i) {
      const auto c = bounds.look(points, i, Cortex::nearest_to_skin_mm);
      if (!c || c->mm >= Cortex::nearest_to_skin_mm) continue;
      any = true;
      push[i] = (target_mm - c->mm) * c->inward;
    }
    if (!any) break;
    if (round == most_rounds)
      throw GeometryError(
          Message::of("The template's brain does not fit under this head's skin; check the four points."));
    if (round < most_rounds / 2) fade_out(bounds, push);
    for (size_t i = 0; i < points.size(); ++i)
      if (const double by_mm = push[i].norm(); by_mm > 0) {
        points[i] += push[i];
        bounds.moved(i, by_mm);
      }
  }
  constexpr double worth_counting_mm = 0.1;
  Pushed result;
  double count = 0;
  for (size_t i = 0; i < points.size(); ++i) {
    const double by_mm = (points[i] - before[i]).norm();
    result.most_mm = std::max(result.most_mm, by_mm);
    if (by_mm > worth_counting_mm) ++count;
  }
  result.share = count / static_cast<double>(points.size());
  return result;
}

}  // namespace

Cortex::Cortex(std::shared_ptr<const TemplateBrain> brain, const Head& head)
    : brain_(std::move(brain)), surface_(brain_->surface), skin_(head.skin()) {
  std::vector<Vector3d> points = mapped(*brain_, head);
  const Pushed pushed = push_in(head.skin(), surface_, points);
  pushed_mm_ = pushed.most_mm;
  pushed_share_ = pushed.share;
  surface_ = surface_.moved(std::move(points));
}

std::optional<CortexHit> Cortex::under(const Vector3d& skin, const Vector3d& inward) const {
  const auto hit = surface_.ray_hit(skin, inward, deepest_mm);
  if (!hit) return {};
  // The same place of the same triangle in the template's own frame, where its atlases lie.
  const Vector3d in_template = brain_->surface.position(hit->point);
  return CortexHit{hit->distance_mm,
                   surface_.position(hit->point),
                   brain_->areas.around(in_template, sphere_radius_mm),
                   brain_->gyri.around(in_template, sphere_radius_mm),
                   (surface_.position(surface_.closest(skin)) - skin).norm(),
                   median_depth_mm(skin, inward, hit->distance_mm)};
}

// Rays side by side, in rings that each stand for as much of the patch as its middle does.
double Cortex::median_depth_mm(const Vector3d& skin, const Vector3d& inward, double in_the_middle_mm) const {
  constexpr int rings = 3, per_ring = 6;
  constexpr double outside_mm = 20;  // where rays start, so that they meet the skin of a curved head first
  const Vector3d across = inward.unitOrthogonal(), along = inward.cross(across);
  std::vector<double> depths{in_the_middle_mm};
  for (int ring = 1; ring <= rings; ++ring)
    for (int i = 0; i < ring * per_ring; ++i) {
      const double turn = 2 * std::numbers::pi * i / (ring * per_ring), out = patch_mm * ring / rings;
      const Vector3d from =
          skin + out * (std::cos(turn) * across + std::sin(turn) * along) - outside_mm * inward;
      const auto on_skin = skin_.ray_hit(from, inward, 2 * outside_mm);
      const auto on_cortex = surface_.ray_hit(from, inward, outside_mm + deepest_mm);
      if (on_skin && on_cortex && on_cortex->distance_mm > on_skin->distance_mm)
        depths.push_back(on_cortex->distance_mm - on_skin->distance_mm);
    }
  const auto middle = depths.begin() + static_cast<std::ptrdiff_t>(depths.size() / 2);
  std::nth_element(depths.begin(), middle, depths.end());
  return *middle;
}

}  // namespace scalpmark::geometry
