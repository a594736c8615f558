#pragma once

#include <optional>
#include <string>

#include "geometry/base/side.h"
#include "geometry/coil/coil_setup.h"
#include "geometry/head/scale.h"
#include "geometry/plan/hand_errors.h"
#include "geometry/plan/visit.h"

namespace scalpmark::geometry {

enum class GridOn { edge_marks, pulse_points };
enum class TreatmentRule { forward, landmark };

struct SearchSettings {
  double lateral_mm = 50;
  double anterior_mm = 10;
  double pitch_mm = 10;
  GridOn grid_on = GridOn::edge_marks;
  MarkRule drawn_by = MarkRule::tape;  ///< its edge marks are measured before a coil is on the head

  friend bool operator==(const SearchSettings&, const SearchSettings&) = default;
};

struct TreatmentSettings {
  TreatmentRule rule = TreatmentRule::forward;
  double distance_mm = 50;             ///< for `forward`
  std::string label;                   ///< for `landmark`: a 10-5 label
  MarkRule drawn_by = MarkRule::drop;  ///< its edge mark is drawn with the coil in place

  friend bool operator==(const TreatmentSettings&, const TreatmentSettings&) = default;
};

/// Where the hotspot's pulse is to lie if not on a spot: from the start's pulse as laid, straight, along the
/// skin's directions there. Empty: on the spot. One alone: none the other way.
struct HotspotOffGrid {
  std::optional<double> forward_mm, outward_mm;

  [[nodiscard]] bool is_given() const { return forward_mm || outward_mm; }
  friend bool operator==(const HotspotOffGrid&, const HotspotOffGrid&) = default;
};

/// The cap the marks are made on (hands/cap.h).
struct CapSettings {
  double brim_over_nasion_mm = 20;  ///< common practice, no source: two centimetres, the arrow down the nose

  friend bool operator==(const CapSettings&, const CapSettings&) = default;
};

/// Whose twitch is an answer, for hotspot and threshold.
enum class CountedAnswers { thumb, index, thumb_or_index };
/// When an output answers in half of its pulses (answers/binomial.h).
enum class CountingBy { five_of_ten, four_of_eight };

/// How answers are counted, and by what steps outputs are tried. Percent of the stimulator's most.
struct AnswerSettings {
  CountedAnswers counted = CountedAnswers::thumb_or_index;
  CountingBy rule = CountingBy::five_of_ten;
  int step_percent = 5;  ///< far from the threshold; common practice, no source
  int fine_percent = 1;  ///< near it; at most the other

  friend bool operator==(const AnswerSettings&, const AnswerSettings&) = default;
};

/// What the user entered, apart from where the head comes from. Lengths mm.
struct Case {
  std::string label;
  MeasuredTapes tape_mm;
  Side side = Side::left;
  SearchSettings search;
  CoilSetup coil;
  GridPosition hotspot;             ///< the spot that answers
  HotspotOffGrid hotspot_off_grid;  ///< instead: a place between spots, that one nearest to it
  bool hotspot_awaited = false;     ///< no spot has answered yet; the plan shows what holds if `hotspot` does
  TreatmentSettings treatment;
  // The plan depends on none of what follows:
  CapSettings cap;
  HandErrors errors;  ///< for tolerance() alone
  AnswerSettings answers;
  Visits visits;

  friend bool operator==(const Case&, const Case&) = default;
};

/// The spot that answered.
inline void take_hotspot(Case& the_case, GridPosition spot) {
  the_case.hotspot = spot;
  the_case.hotspot_off_grid = {};
  the_case.hotspot_awaited = false;
}

/// Whether the treatment site hangs on a spot that has not answered yet.
[[nodiscard]] inline bool site_is_open(const Case& the_case) {
  return the_case.hotspot_awaited && the_case.treatment.rule == TreatmentRule::forward;
}

/// One rule for drawing the marks and for laying the coil alike.
inline void use_one_rule(Case& the_case, MarkRule rule) {
  the_case.search.drawn_by = the_case.treatment.drawn_by = the_case.coil.laid_by = rule;
}

}  // namespace scalpmark::geometry
