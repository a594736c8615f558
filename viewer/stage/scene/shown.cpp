#include "viewer/stage/scene/shown.h"

#include "geometry/base/message.h"
#include "viewer/words/error.h"
#include "viewer/words/site_words.h"
#include "viewer/words/words.h"

namespace scalpmark::viewer {

CourseShown course_shown(const geometry::CheckedCourse& checked, const geometry::Head& head,
                         const geometry::Plan& plan) {
  CourseShown shown;
  const geometry::Course& course = checked.course;
  for (std::size_t i = 0; i < course.offsets.size(); ++i)
    if (course.offsets[i])
      shown.visits.push_back({checked.checks[i].check->as_laid.pulse, i + 1, course.outside[i]});
  if (!course.stretches.empty())
    shown.ellipses = geometry::course_ellipses(head, plan, course.stretches.back(), course);
  return shown;
}

const geometry::Placement& placement_shown(const geometry::Plan& plan, const Shown& shown) {
  switch (shown.coil_on) {
    case CoilOn::start:
      return plan.start;
    case CoilOn::hotspot:
      return plan.hotspot;
    case CoilOn::treatment:
      return plan.treatment;
    case CoilOn::elsewhere:
      if (shown.placement) return *shown.placement;
      break;
    case CoilOn::spot:
      for (const auto& spot : plan.grid)
        if (spot.row == shown.row && spot.column == shown.column) return spot.placement;
      break;
  }
  throw ViewerError(geometry::Message::of(
      "The search grid has no spot at row %1, column %2; rows and columns run from -1 to 1.", shown.row,
      shown.column));
}

std::string where_shown(const Shown& shown) {
  switch (shown.coil_on) {
    case CoilOn::start:
      return words(Words::tr("on the start"));
    case CoilOn::hotspot:
      return words(Words::tr("on the hotspot"));
    case CoilOn::treatment:
      return words(Words::tr("on the treatment site"));
    case CoilOn::spot:
      return words(Words::tr("on the spot: %1", "of the grid"), {spot_in_words(shown.row, shown.column)});
    case CoilOn::elsewhere:
      break;
  }
  return shown.in_hand ? words(Words::tr("in the hand")) : words(Words::tr("as laid"));
}

}  // namespace scalpmark::viewer
