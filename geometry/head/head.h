#pragma once

#include <functional>
#include <memory>
#include <string>

#include "geometry/head/fiducials.h"
#include "geometry/paths/distance_field.h"
#include "geometry/surface/surface.h"

namespace scalpmark::geometry {

/// The three lengths staff take with a tape, mm.
struct TapeMeasures {
  double nasion_inion_mm = 0;   ///< over the vertex
  double tragus_tragus_mm = 0;  ///< over the vertex
  double circumference_mm = 0;  ///< through Fpz, T7, Oz, T8
};

struct VertexTapes;  // vertex.h

/// One patient's head: skin, fiducials, axes, and what is the same for every edit (the vertex, the tapes, the
/// distance fields from the vertex, nasion and tragi: worked out once, on first use). Const and thread-safe;
/// copies share everything.
class Head {
public:
  /// Refuses what place_fiducials refuses, and a head on which the vertex cannot be found (GeometryError).
  Head(Surface skin, const Fiducials& fiducials);
  /// The same from fiducials already on this skin and a skin point near the top, without a search (for a head
  /// that was moved or scaled).
  /// `settled_mm`: how closely the vertex halves both tapes.
  Head(Surface skin, const SkinFiducials& fiducials, const SurfacePoint& near_vertex,
       double settled_mm = 1e-5);

  [[nodiscard]] const Surface& skin() const;
  [[nodiscard]] const SkinFiducials& fiducials() const;
  [[nodiscard]] const HeadAxes& axes() const;
  [[nodiscard]] const SurfacePoint& vertex() const;  ///< Cz: half way along both tapes at once
  [[nodiscard]] const VertexTapes& vertex_tapes() const;
  [[nodiscard]] const TapeMeasures& tapes() const;

  struct Fields {
    DistanceField vertex, nasion, left_tragus, right_tragus;
  };
  /// Worked out on first use, on as many threads as there are cores: seconds on a large head. `watch` is
  /// called many times a second meanwhile, from those threads; what it throws is thrown here, and the next
  /// call begins anew.
  const Fields& fields(const std::function<void()>& watch = {}) const;
  /// Whether they are there, so that fields() returns at once.
  [[nodiscard]] bool has_fields() const;

  /// Whether both are copies of one head.
  [[nodiscard]] bool same_as(const Head& other) const { return data_ == other.data_; }

private:
  struct Data;
  std::shared_ptr<const Data> data_;
};

}  // namespace scalpmark::geometry
