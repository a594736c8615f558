#include "viewer/words/shift_words.h"

#include <cmath>

#include "geometry/plan/pulse_shift.h"
#include "viewer/words/numbers.h"
#include "viewer/words/words.h"

namespace scalpmark::viewer {

using geometry::MarkRule;

namespace {

/// "Laid by eye over this mark, the pulse lands 0.5 cm behind the point that was measured."
std::string where_it_lands(const geometry::Placement& placement, MarkRule laid_by) {
  const geometry::PulseShift shift = geometry::pulse_shift(placement);
  const bool by_tape = laid_by == MarkRule::tape;
  const std::string far = tape_length(placement.wanted_to_pulse_mm);
  if (std::abs(shift.beside_mm) > std::abs(shift.front_mm))
    return words(by_tape
                     ? Words::tr("Laid with a tape over this mark, the pulse lands %1 to the side of the "
                                 "point that was measured.")
                     : Words::tr("Laid by eye over this mark, the pulse lands %1 to the side of the point "
                                 "that was measured."),
                 {far});
  if (shift.front_mm < 0)
    return words(by_tape
                     ? Words::tr("Laid with a tape over this mark, the pulse lands %1 behind the point that "
                                 "was measured, toward the coil's handle.")
                     : Words::tr("Laid by eye over this mark, the pulse lands %1 behind the point that was "
                                 "measured, toward the coil's handle."),
                 {far});
  return words(
      by_tape ? Words::tr("Laid with a tape over this mark, the pulse lands %1 in front of the point that "
                          "was measured, toward the coil's front edge.")
              : Words::tr("Laid by eye over this mark, the pulse lands %1 in front of the point that was "
                          "measured, toward the coil's front edge."),
      {far});
}

/// What makes up for it.
std::string what_to_do(const geometry::Placement& placement, MarkRule drawn_by,
                       const geometry::CoilSetup& coil) {
  const auto& tape = placement.tape_to_draw_mm;
  if (drawn_by != MarkRule::tape) {
    if (coil.laid_by == MarkRule::tape)
      return words(Words::tr("Mark it with a tape of %1 along the skin instead, as the coil is laid."),
                   {tape_length(coil.centre_to_edge_mm)});
    return words(coil.laid_by == MarkRule::drop
                     ? Words::tr("Mark it straight down past the coil's edge instead, as the coil is laid.")
                     : Words::tr("Mark the skin nearest to the coil's edge instead, as the coil is laid."));
  }
  if (!tape) return words(Words::tr("No tape makes up for it here: make the mark anew once the coil is on."));
  return words(
      coil.laid_by == MarkRule::drop
          ? Words::tr(
                "Draw the mark %1 along the skin instead of %2, or turn it into a drop mark once the coil "
                "is on.")
          : Words::tr(
                "Draw the mark %1 along the skin instead of %2, or make it anew, on the skin nearest to "
                "the edge, once the coil is on."),
      {tape_length(*tape), tape_length(coil.centre_to_edge_mm)});
}

}  // namespace

std::string shift_sentence(const geometry::Placement& placement, MarkRule drawn_by,
                           const geometry::CoilSetup& coil) {
  if (drawn_by == coil.laid_by || !geometry::is_shifted(placement)) return "";
  return where_it_lands(placement, coil.laid_by) + " " + what_to_do(placement, drawn_by, coil);
}

}  // namespace scalpmark::viewer
