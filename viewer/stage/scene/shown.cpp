#include "viewer/stage/scene/shown.h"

#include <array>
#include <utility>

#include "geometry/base/message.h"
#include "viewer/words/error.h"
#include "viewer/words/site_words.h"
#include "viewer/words/words.h"

namespace scalpmark::viewer {

namespace {

constexpr std::array<std::pair<Thing, std::string_view>, 26> thing_names_known{
    {{Thing::skin, "skin"},           {Thing::landmarks, "landmarks"},
     {Thing::tapes, "tapes"},         {Thing::grid, "grid"},
     {Thing::start, "start"},         {Thing::hotspot, "hotspot"},
     {Thing::treatment, "treatment"}, {Thing::alternatives, "alternatives"},
     {Thing::tolerance, "tolerance"}, {Thing::coil, "coil"},
     {Thing::angle, "angle"},         {Thing::edge_marks, "edge-marks"},
     {Thing::wanted, "wanted"},       {Thing::labels, "labels"},
     {Thing::legend, "legend"},       {Thing::numbers, "numbers"},
     {Thing::title, "title"},         {Thing::cortex, "cortex"},
     {Thing::gaps, "gaps"},           {Thing::way_marks, "way-marks"},
     {Thing::sight, "sight"},         {Thing::cap, "cap"},
     {Thing::places, "places"},       {Thing::field, "field"},
     {Thing::answers, "answers"},     {Thing::course, "course"}}};

}  // namespace

std::string_view name_of(Thing thing) {
  for (const auto& [t, name] : thing_names_known)
    if (t == thing) return name;
  return "";
}

std::optional<Thing> thing_named(std::string_view name) {
  for (const auto& [thing, n] : thing_names_known)
    if (n == name) return thing;
  return {};
}

const std::vector<Thing>& all_things() {
  static const std::vector<Thing> all = [] {
    std::vector<Thing> things;
    things.reserve(thing_names_known.size());
    for (const auto& [thing, name] : thing_names_known) things.push_back(thing);
    return things;
  }();
  return all;
}

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
