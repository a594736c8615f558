#include "viewer/words/site_words.h"

#include "geometry/head/landmark_names.h"
#include "viewer/words/answer_words.h"
#include "viewer/words/numbers.h"
#include "viewer/words/words.h"

namespace scalpmark::viewer {

using geometry::TreatmentRule;

namespace {

/// A site of the kernel half way between two landmarks is labelled with both: "F3-AF3".
std::string landmark_or_half_way(const std::string& label) {
  const auto dash = label.find('-');
  if (dash == std::string::npos) return label;
  return words(Words::tr("half way between %1 and %2"), {label.substr(0, dash), label.substr(dash + 1)});
}

}  // namespace

std::string site_in_words(const geometry::Case& the_case) {
  const geometry::TreatmentSettings& treatment = the_case.treatment;
  if (geometry::site_is_open(the_case))
    return words(Words::tr("%1 forward of the middle spot, if that one answers"),
                 {tape_length(treatment.distance_mm)});
  return treatment.rule == TreatmentRule::forward
             ? words(Words::tr("%1 forward of the hotspot"), {tape_length(treatment.distance_mm)})
             : words(Words::tr("at %1", "a landmark"),
                     {geometry::canonical_label(treatment.label).value_or(treatment.label)});
}

std::string other_site_in_words(const geometry::TreatmentAlternative& site) {
  return site.rule == TreatmentRule::forward
             ? words(Words::tr("%1 forward of the hotspot"), {tape_length(site.distance_mm)})
             : landmark_or_half_way(site.label);
}

std::string other_site_in_short(const geometry::TreatmentAlternative& site) {
  return site.rule == TreatmentRule::forward ? words(Words::tr("%1 forward"), {tape_length(site.distance_mm)})
                                             : landmark_or_half_way(site.label);
}

std::string hotspot_in_words(const geometry::Case& the_case) {
  if (the_case.hotspot_off_grid.is_given()) return words(off_grid_name(the_case.hotspot_off_grid));
  return the_case.hotspot_awaited ? words(Words::tr("not found yet"))
                                  : spot_in_words(the_case.hotspot.row, the_case.hotspot.column);
}

std::string spot_in_words(int row, int column) {
  if (row == 0 && column == 0) return words(Words::tr("the start"));
  std::string steps;
  if (row != 0) steps = words(row > 0 ? Words::tr("one step forward") : Words::tr("one step back"));
  if (column == 0) return steps;
  return (steps.empty() ? "" : steps + ", ") +
         words(column > 0 ? Words::tr("one step outward") : Words::tr("one step toward the midline"));
}

}  // namespace scalpmark::viewer
