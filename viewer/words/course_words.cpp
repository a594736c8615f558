#include "viewer/words/course_words.h"

#include <algorithm>
#include <cmath>

#include "viewer/words/numbers.h"

namespace scalpmark::viewer {

using geometry::Message;
using geometry::number;

namespace {

/// What moved, a standard deviation either way, in whole units of this many.
struct MovedRange {
  double low = 0, high = 0;
};

MovedRange moved_range(double moved, double se) {
  const double size = std::abs(moved);
  return {std::round(std::max(0.0, size - se)), std::round(size + se)};
}

/// "4 to 6 mm".
Message moved_length(double moved_mm, double se_mm) {
  const MovedRange range = moved_range(moved_mm, se_mm);
  if (range.low == range.high) return Message::verbatim(rough_length(range.high));
  return Message::of("%1 to %2", rough_number(range.low), rough_length(range.high));
}

Message moved_angle(double moved_deg, double se_deg) {
  const MovedRange range = moved_range(moved_deg, se_deg);
  if (range.low == range.high) return Message::of("%1 degrees", number(range.high, 0));
  return Message::of("%1 to %2 degrees", number(range.low, 0), number(range.high, 0));
}

Message error_rate() {
  return Message::of("Of 100 courses in which nothing changed, chance alone would have this said of %1.",
                     number(100 * geometry::drift_error_rate, 0));
}

struct VisitsParted {
  std::size_t first = 0, last = 0;
};

VisitsParted parted(const geometry::CourseStretch& stretch, const geometry::Drift& drift) {
  return {drift.before, stretch.measured.size() - drift.before};
}

}  // namespace

Message drift_sentence(const geometry::CourseStretch& stretch) {
  const std::size_t count = stretch.measured.size();
  if (!stretch.place_drift) {
    if (count < geometry::fewest_visits_for_drift)
      return Message::of("%1 visits with known marks; a drift shows from %2 on.", count,
                         geometry::fewest_visits_for_drift);
    return Message::of("No drift shows in %1 visits.", count);
  }
  const geometry::Drift& drift = *stretch.place_drift;
  const VisitsParted visits = parted(stretch, drift);
  const bool along = std::abs(drift.moved_mm.x()) >= std::abs(drift.moved_mm.y());
  const Eigen::Index axis = along ? 0 : 1;
  const bool plus = drift.moved_mm[axis] > 0;
  const Message by = moved_length(drift.moved_mm[axis], drift.se_mm[axis]);
  const Message found =
      along
          ? plus
                ? Message::of(
                      "The last %1 visits lie %2 in front of the first %3: a mark has crept, or the cap sits further forward.",
                      visits.last, by, visits.first)
                : Message::of(
                      "The last %1 visits lie %2 behind the first %3: a mark has crept, or the cap sits further back.",
                      visits.last, by, visits.first)
      : plus
          ? Message::of(
                "The last %1 visits lie %2 nearer the midline than the first %3: a mark has crept, or the cap sits further to the other side.",
                visits.last, by, visits.first)
          : Message::of(
                "The last %1 visits lie %2 further from the midline than the first %3: a mark has crept, or the cap sits further to that side.",
                visits.last, by, visits.first);
  return Message::of("%1 %2", found, error_rate());
}

Message angle_drift_sentence(const geometry::CourseStretch& stretch) {
  if (!stretch.angle_drift) return {};
  const geometry::Drift& drift = *stretch.angle_drift;
  const VisitsParted visits = parted(stretch, drift);
  const Message by = moved_angle(drift.moved_mm.x(), drift.se_mm.x());
  const Message found =
      drift.moved_mm.x() > 0
          ? Message::of(
                "In the last %1 visits the coil is turned %2 further to the midline than in the first %3.",
                visits.last, by, visits.first)
          : Message::of(
                "In the last %1 visits the coil is turned %2 further from the midline than in the first %3.",
                visits.last, by, visits.first);
  return Message::of("%1 %2", found, error_rate());
}

Message limits_sentence(const geometry::CourseStretch& stretch) {
  if (!stretch.distance || !stretch.angle)
    return Message::of("Limits need two visits with known marks or more.");
  return Message::of(
      "Usual here: up to %1 from the site, angle from %2 to %3 degrees off (for a single visit, from the first %4 visits).",
      small_length(stretch.distance->high), geometry::Number{stretch.angle->low, 0, true},
      geometry::Number{stretch.angle->high, 0, true},
      std::min(stretch.measured.size(), geometry::visits_for_limits));
}

}  // namespace scalpmark::viewer
