#include "viewer/teach/field_steps.h"

#include <algorithm>
#include <cmath>

#include "geometry/field/moved_coil.h"
#include "viewer/stage/scene/field_shown.h"
#include "viewer/words/field_words.h"
#include "viewer/words/numbers.h"
#include "viewer/words/words.h"

namespace scalpmark::viewer {

using geometry::CoilMoved;

namespace {

/// Its space does not break, in a caption that wraps.
std::string percent_left(const std::vector<geometry::MovedRatio>& moved, CoilMoved how, double by) {
  std::string text =
      words(Words::tr("%1 %", "a percentage"),
            {std::to_string(std::min(100L, std::lround(100 * ratio_of(moved, how, by).value_or(0))))});
  if (const auto space = text.find(' '); space != std::string::npos) text.replace(space, 1, "\u00a0");
  return text;
}

LessonStep why_gap(const geometry::Plan& plan, const std::vector<geometry::MovedRatio>& moved) {
  LessonStep s;
  s.topic = LessonTopic::gap;
  s.why = words(Words::tr(
      "A magnetic field spreads as it leaves the coil, so every millimetre between coil and brain takes some of it "
      "away."));
  s.title = words(Words::tr("Why the gap matters"));
  s.caption = words(
      Words::tr("The field fades fast with distance. In a round model head %5 of hair leave %1 of it at the "
                "wanted place, %6 leave %2, %7 leave %3; a wing lifted by 10\u00b0 leaves %4. Part the "
                "hair, and look under both wings."),
      {percent_left(moved, CoilMoved::gap, 2), percent_left(moved, CoilMoved::gap, 5),
       percent_left(moved, CoilMoved::gap, 10), percent_left(moved, CoilMoved::roll, 10), rough_length(2),
       rough_length(5), rough_length(10)});
  s.view = geometry::side_of(plan.treatment) == geometry::Side::left ? View::front_left : View::front_right;
  s.shown.things = {Thing::skin, Thing::treatment, Thing::coil, Thing::field, Thing::labels};
  return s;
}

LessonStep why_angle(const geometry::Case& c, const std::vector<geometry::MovedRatio>& moved) {
  LessonStep s;
  s.topic = LessonTopic::across;
  s.why = words(Words::tr(
      "Nerve fibres answer most readily to a field along them, and those of the hand's fold run across it."));
  s.title = words(Words::tr("Why %1"), {in_degrees(c.coil.angle_deg)});
  s.caption = words(
      Words::tr(
          "The field runs along the coil's front axis, and its patch is longest that way. At about "
          "45\u00b0 to the midline this crosses the central sulcus, onto the precentral gyrus. In a round "
          "model head a coil turned by 20\u00b0 leaves %1 of the field along that line, one turned by "
          "45\u00b0 %2."),
      {percent_left(moved, CoilMoved::turn, 20), percent_left(moved, CoilMoved::turn, 45)});
  s.view = View::square_on;
  s.shown.things = {Thing::skin, Thing::hotspot, Thing::coil, Thing::angle, Thing::field, Thing::labels};
  s.shown.coil_on = CoilOn::hotspot;
  return s;
}

}  // namespace

std::vector<LessonStep> field_steps(const geometry::Head& head, const geometry::Case& the_case,
                                    const geometry::Plan& plan) {
  const geometry::Coil& coil = the_case.coil.model;
  std::vector<LessonStep> steps;
  if (const auto field = field_under(head, nullptr, coil, plan.treatment)) {
    steps.push_back(why_gap(plan, geometry::moved_ratios(head.skin(), coil, *field)));
    steps.back().shown.field = field;
  }
  if (const auto field = field_under(head, nullptr, coil, plan.hotspot); field && !is_ring(field->map)) {
    steps.push_back(why_angle(the_case, geometry::moved_ratios(head.skin(), coil, *field)));
    steps.back().shown.field = field;
  }
  return steps;
}

}  // namespace scalpmark::viewer
