#include "viewer/stage/scene/mark.h"

#include <functional>
#include <utility>

#include "geometry/surface/patch_normal.h"

namespace scalpmark::viewer {

using Eigen::Vector3d;

namespace {

constexpr double calm_patch_mm = 8;
/// A coil that is dragged about asks for a few new ones a step.
constexpr std::size_t most_kept = 20000;
/// Rays to the eye start this far off the skin, so that its own roughness does not hide a mark.
constexpr double clear_of_roughness_mm = 2;
/// That lets marks a little past the horizon see the eye too; they turn away by more than this (a sine).
constexpr double past_horizon = 0.05;

}  // namespace

namespace {

int layer_of_plan(Shape shape, Thing thing) {
  switch (shape) {
    case Shape::dot:
      return 0;
    case Shape::small_bar:
      return 1;
    case Shape::small_disc:
    case Shape::small_hollow_disc:
      return 2;
    case Shape::small_diamond:
      return 3;
    case Shape::ring:
      return 5;
    case Shape::diamond:
      return 6;
    case Shape::bar:
      return 7;
    case Shape::tag:
    case Shape::pencil_cross:
    case Shape::brackets:
      return 9;
    case Shape::disc:
    case Shape::hollow_disc:
      break;
  }
  return thing == Thing::start ? 4 : 8;
}

}  // namespace

int Mark::layer() const {
  constexpr int above_the_plan = 10;  // what is noted besides it
  return layer_of_plan(shape, thing) + (thing == Thing::labels ? above_the_plan : 0);
}

Vector3d calm_normal(const geometry::Surface& skin, const Vector3d& at) {
  return geometry::patch_normal(skin, skin.closest(at), calm_patch_mm);
}

std::size_t CalmNormals::Hash::operator()(const Vector3d& p) const {
  std::size_t all = 0;
  for (const double v : p) all = 31 * all + std::hash<double>()(v);
  return all;
}

Vector3d CalmNormals::at(const geometry::Surface& skin, const Vector3d& at) {
  if (!skin_ || !same_surface(*skin_, skin) || known_.size() >= most_kept) known_.clear();
  skin_ = skin;
  const auto [known, fresh] = known_.try_emplace(at);
  if (fresh) known->second = calm_normal(skin, at);
  return known->second;
}

Mark make_mark(Thing thing, std::string name, Shape shape, Role role, const Vector3d& at,
               const Vector3d& normal, const Vector3d& along) {
  Mark mark{thing, std::move(name), shape, role, at, normal, along, {}};
  Vector3d flat = along - along.dot(normal) * normal;
  if (flat.norm() < 1e-6) flat = normal.unitOrthogonal();
  mark.along = flat.normalized();
  return mark;
}

bool in_sight(const geometry::Surface& skin, const Vector3d& at, const Vector3d& normal, const Sight& sight) {
  const Vector3d way = sight.way_to_eye(at);
  return normal.dot(way) > -past_horizon && !skin.ray_hit(at + clear_of_roughness_mm * normal, way);
}

}  // namespace scalpmark::viewer
