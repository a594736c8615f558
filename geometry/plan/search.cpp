#include "geometry/plan/search.h"

#include "geometry/base/error.h"
#include "geometry/head/face_region.h"
#include "geometry/head/on_head.h"
#include "geometry/head/vertex.h"
#include "geometry/tapes/laid_tape.h"

namespace scalpmark::geometry {

SurfacePoint grid_place(const Head& head, Side side, const SurfacePoint& middle, double pitch_mm,
                        const GridPosition& spot) {
  SurfacePoint at = middle;
  if (spot.column != 0) {
    const Directions d = directions_at(head, side, at);
    const auto tape = lay_tape(head.skin(), at, spot.column * d.outward, pitch_mm);
    if (!tape)
      throw GeometryError(Message::of("The search grid reaches past the skin's border; move the start."));
    at = tape->end;
  }
  return spot.row == 0 ? at : forward_tape(head, at, spot.row * pitch_mm).at(1).on_skin;
}

StartTapes measure_start(const Head& head, const Tape& coronal, double vertex_mm, Side side,
                         double lateral_mm, double anterior_mm) {
  const double side_mm = vertex_mm + way_to(side) * lateral_mm;
  return {coronal.line_between(vertex_mm, side_mm),
          forward_tape(head, coronal.at_mm(side_mm).on_skin, anterior_mm)};
}

LaidSearch lay_search(const Head& head, const Case& the_case, TapeDistances tapes) {
  const Tape& coronal = head.vertex_tapes().coronal;
  const SearchSettings& search = the_case.search;
  StartTapes measured = measure_start(head, coronal, 0.5 * coronal.length_mm(), the_case.side,
                                      search.lateral_mm, search.anterior_mm);
  const SectionPoint start_point = measured.anterior.at(1);
  if (on_face(head, start_point.at))
    throw GeometryError(
        Message::of("The search start falls on the face; shorten search.lateral_mm or search.anterior_mm."));
  LaidCoil start =
      draw_and_lay(head, the_case.coil, search.drawn_by, the_case.side, start_point.on_skin, tapes);

  // The grid, as drawn with a pencil on edge marks, or laid out on pulse points.
  const bool on_marks = search.grid_on == GridOn::edge_marks;
  if (on_marks && !start.mark)
    throw GeometryError(Message::of(
        "The start's edge mark by the %1 rule falls off the head, so no grid can be drawn around it; choose another rule, angle or start.",
        in_words(search.drawn_by)));
  LaidSearch laid{std::move(measured), start, {}, {}, 4, {}};
  const SurfacePoint& middle = on_marks ? *start.mark : start.wanted;
  for (int row = -1; row <= 1; ++row)
    for (int column = -1; column <= 1; ++column) {
      if (row == the_case.hotspot.row && column == the_case.hotspot.column) laid.hotspot = laid.coils.size();
      laid.spots.push_back({row, column, {}});
      if (row == 0 && column == 0) {
        laid.coils.push_back(start);
        continue;
      }
      const SurfacePoint at = grid_place(head, the_case.side, middle, search.pitch_mm, {row, column});
      laid.coils.push_back(
          on_marks ? lay_over(head, the_case.coil, search.drawn_by, the_case.side, at, start.wanted, tapes)
                   : draw_and_lay(head, the_case.coil, search.drawn_by, the_case.side, at, tapes));
    }
  if (the_case.hotspot_off_grid.is_given()) {
    const HotspotOffGrid& off = the_case.hotspot_off_grid;
    const Placement& from = start.placement;
    const Eigen::Vector3d there =
        from.pulse + off.forward_mm.value_or(0) * from.forward - off.outward_mm.value_or(0) * from.inward;
    laid.off_grid = lay_coil(head, the_case.coil, the_case.side, head.skin().closest(there), tapes);
  }
  return laid;
}

}  // namespace scalpmark::geometry
