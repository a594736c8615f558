#include "geometry/head/head.h"

#include <array>
#include <atomic>
#include <mutex>
#include <optional>

#include "geometry/base/all_cores.h"
#include "geometry/base/error.h"
#include "geometry/head/vertex.h"

namespace scalpmark::geometry {

struct Head::Data {
  Data(Surface s, SkinFiducials f, const HeadAxes& a, VertexTapes t)
      : skin(std::move(s)), fiducials(std::move(f)), axes(a), tapes(std::move(t)) {}
  Surface skin;
  SkinFiducials fiducials;
  HeadAxes axes;
  VertexTapes tapes;
  mutable std::once_flag measures_once;
  mutable TapeMeasures measures;
  mutable std::mutex making_fields;
  mutable std::optional<Fields> fields;
  mutable std::atomic<bool> fields_there{false};
};

namespace {

SurfacePoint top_of(const Surface& skin, const HeadAxes& axes) {
  // From far above, so that a hollow or an inner wall is never taken for the top.
  constexpr double above_mm = 400;
  const auto hit = skin.ray_hit(axes.origin + above_mm * axes.up, -axes.up, above_mm);
  if (!hit)
    throw GeometryError(
        Message::of("No skin was found above the tragi; the surface must cover the top of the head."));
  return hit->point;
}

}  // namespace

Head::Head(Surface skin, const Fiducials& fiducials) {
  const SkinFiducials placed = place_fiducials(skin, fiducials);
  const HeadAxes axes = head_axes(placed.at);
  VertexTapes tapes = find_vertex(skin, placed, top_of(skin, axes));
  data_ = std::make_shared<const Data>(std::move(skin), placed, axes, std::move(tapes));
}

Head::Head(Surface skin, const SkinFiducials& fiducials, const SurfacePoint& near_vertex, double settled_mm) {
  SkinFiducials placed = fiducials;
  placed.at = {skin.position(fiducials.nasion), skin.position(fiducials.inion),
               skin.position(fiducials.left_tragus), skin.position(fiducials.right_tragus)};
  const HeadAxes axes = head_axes(placed.at);
  VertexTapes tapes = find_vertex(skin, placed, near_vertex, settled_mm);
  data_ = std::make_shared<const Data>(std::move(skin), placed, axes, std::move(tapes));
}

const Surface& Head::skin() const {
  return data_->skin;
}
const SkinFiducials& Head::fiducials() const {
  return data_->fiducials;
}
const HeadAxes& Head::axes() const {
  return data_->axes;
}
const SurfacePoint& Head::vertex() const {
  return data_->tapes.vertex;
}
const VertexTapes& Head::vertex_tapes() const {
  return data_->tapes;
}
const TapeMeasures& Head::tapes() const {
  const Data& d = *data_;
  std::call_once(d.measures_once, [&] { d.measures = measure(d.skin, d.tapes); });
  return d.measures;
}

bool Head::has_fields() const {
  return data_->fields_there;
}

const Head::Fields& Head::fields(const std::function<void()>& watch) const {
  const Data& d = *data_;
  if (d.fields_there) return *d.fields;
  const std::lock_guard lock(d.making_fields);
  if (d.fields_there) return *d.fields;
  const std::array<SurfacePoint, 4> sources{d.tapes.vertex, d.fiducials.nasion, d.fiducials.left_tragus,
                                            d.fiducials.right_tragus};
  std::array<std::optional<DistanceField>, 4> fields;
  // No more at a time than there are cores: each holds about 100 MB while it is worked out.
  on_all_cores(sources.size(), [&](size_t i) { fields[i].emplace(d.skin, sources[i], watch); });
  d.fields.emplace(
      Fields{std::move(*fields[0]), std::move(*fields[1]), std::move(*fields[2]), std::move(*fields[3])});
  d.fields_there = true;
  return *d.fields;
}

}  // namespace scalpmark::geometry
