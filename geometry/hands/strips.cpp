#include "geometry/hands/strips.h"

#include <algorithm>
#include <utility>

#include "geometry/head/vertex.h"

namespace scalpmark::geometry {

namespace {

using Shares = std::vector<std::pair<const char*, double>>;

/// Positions of the 10-20 system at their share of a tape (Klem et al. 1999).
void add_landmarks(Strip& tape, const Shares& shares, double from_mm, double length_mm) {
  for (const auto& [label, share] : shares)
    tape.marks.push_back({from_mm + share * length_mm, StripMarkKind::landmark, label});
}

void sort_marks(Strip& tape) {
  std::stable_sort(tape.marks.begin(), tape.marks.end(),
                   [](const StripMark& a, const StripMark& b) { return a.at_mm < b.at_mm; });
}

Strip midline_strip(const VertexTapes& tapes) {
  Strip tape{StripKind::midline, tapes.midline.length_mm(), {}};
  add_landmarks(tape, {{"Nz", 0}, {"Fpz", 0.1}, {"Fz", 0.3}, {"Pz", 0.7}, {"Oz", 0.9}, {"Iz", 1}}, 0,
                tape.length_mm);
  tape.marks.push_back({0.5 * tape.length_mm, StripMarkKind::half});
  sort_marks(tape);
  return tape;
}

Strip coronal_strip(const VertexTapes& tapes, const Case& the_case) {
  Strip tape{StripKind::coronal, tapes.coronal.length_mm(), {}};
  const double half = 0.5 * tape.length_mm;
  add_landmarks(tape, {{"", 0}, {"T7", 0.1}, {"C3", 0.3}, {"C4", 0.7}, {"T8", 0.9}, {"", 1}}, 0,
                tape.length_mm);
  tape.marks.push_back({half, StripMarkKind::half});
  tape.marks.push_back({half + way_to(the_case.side) * the_case.search.lateral_mm, StripMarkKind::out});
  sort_marks(tape);
  return tape;
}

Strip strip_around(const Head& head) {
  const VertexTapes& tapes = head.vertex_tapes();
  const Tape left = side_tape(head.skin(), tapes, true), right = side_tape(head.skin(), tapes, false);
  // T7 and T8 are places of the coronal tape; on a lopsided head the tapes around pass them before or behind
  // their halves.
  const double t7 = left.fraction_of(tapes.coronal.at(0.1).at),
               t8 = right.fraction_of(tapes.coronal.at(0.9).at);
  const double left_mm = left.length_mm(), right_mm = right.length_mm();
  Strip strip{StripKind::around, left_mm + right_mm, {}};
  add_landmarks(strip,
                {{"Fpz", 0}, {"Fp1", 0.1}, {"F7", 0.3}, {"T7", t7}, {"P7", 0.7}, {"O1", 0.9}, {"Oz", 1}}, 0,
                left_mm);
  add_landmarks(strip, {{"O2", 0.1}, {"P8", 0.3}, {"T8", 1 - t8}, {"F8", 0.7}, {"Fp2", 0.9}, {"Fpz", 1}},
                left_mm, right_mm);
  sort_marks(strip);
  return strip;
}

Strip forward_strip(StripKind kind, StripMarkKind from, StripMarkKind to, double length_mm) {
  return {kind, length_mm, {{0, from}, {length_mm, to}}};
}

}  // namespace

std::vector<Strip> strips(const Head& head, const Case& the_case, const Plan& plan) {
  const VertexTapes& tapes = head.vertex_tapes();
  std::vector<Strip> all{midline_strip(tapes), coronal_strip(tapes, the_case), strip_around(head)};
  const auto line = [&](const char* name) {
    return std::find_if(plan.lines.begin(), plan.lines.end(),
                        [&](const PlanLine& each) { return each.name == name; });
  };
  constexpr double nothing_mm = 0.05;  // less than a pencil's line is wide
  if (const auto anterior = line("anterior");
      anterior != plan.lines.end() && anterior->length_mm > nothing_mm)
    all.push_back(forward_strip(StripKind::to_the_start, StripMarkKind::out, StripMarkKind::start,
                                anterior->length_mm));
  if (const auto step = line("treatment"); step != plan.lines.end() && step->length_mm > nothing_mm)
    all.push_back(
        forward_strip(StripKind::to_the_site, StripMarkKind::hotspot, StripMarkKind::site, step->length_mm));
  return all;
}

}  // namespace scalpmark::geometry
