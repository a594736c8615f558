#include "geometry/head/vertex.h"

#include "geometry/base/error.h"

namespace scalpmark::geometry {

namespace {
constexpr int most_rounds = 60;
}  // namespace

VertexTapes find_vertex(const Surface& skin, const SkinFiducials& fiducials, const SurfacePoint& guess,
                        double settled_mm) {
  SurfacePoint vertex = guess;
  for (int round = 0; round < most_rounds; ++round) {
    Tape midline = Tape::over(skin, fiducials.nasion, vertex, fiducials.inion);
    const SectionPoint half = midline.at(0.5);
    Tape coronal = Tape::over(skin, fiducials.left_tragus, half.on_skin, fiducials.right_tragus);
    const SectionPoint crossing = coronal.at(0.5);
    vertex = crossing.on_skin;
    if ((crossing.at - half.at).norm() < settled_mm) return {vertex, std::move(midline), std::move(coronal)};
  }
  throw GeometryError(Message::of(
      "The vertex does not settle: half of nasion-inion and half of tragus-tragus do not meet on this skin; check the four points and the surface at the top of the head."));
}

Tape side_tape(const Surface& skin, const VertexTapes& tapes, bool left) {
  return Tape::over(skin, tapes.midline.at(0.1).on_skin, tapes.coronal.at(left ? 0.1 : 0.9).on_skin,
                    tapes.midline.at(0.9).on_skin);
}

TapeMeasures measure(const Surface& skin, const VertexTapes& tapes) {
  return {tapes.midline.length_mm(), tapes.coronal.length_mm(),
          side_tape(skin, tapes, true).length_mm() + side_tape(skin, tapes, false).length_mm()};
}

}  // namespace scalpmark::geometry
