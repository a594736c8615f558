#include "viewer/teach/lesson.h"

#include <algorithm>
#include <cmath>

#include "geometry/hands/check.h"
#include "geometry/head/landmarks.h"
#include "viewer/words/numbers.h"
#include "viewer/words/shift_words.h"
#include "viewer/words/words.h"

namespace scalpmark::viewer {

using geometry::MarkRule;
using geometry::Side;

namespace {

/// The coil fills the picture; a stretch of skin with a few marks does.
constexpr double coil_across_mm = 190, marks_across_mm = 150;
/// Common practice, no source; said in the unit that is read.
constexpr double heads_differ_mm = 30, hands_differ_mm = 10;

Eigen::Vector3d vertex_of(const geometry::Plan& plan) {
  for (const auto& landmark : plan.landmarks)
    if (landmark.name == "Cz") return landmark.at;
  return plan.start.pulse;
}

Eigen::Vector3d middle_of(const Eigen::Vector3d& a, const Eigen::Vector3d& b) {
  return 0.5 * (a + b);
}

/// Toward the forehead, where the treated side is still seen.
View forehead_view(Side side) {
  return side == Side::left ? View::front_left : View::front_right;
}

LessonStep measure(const geometry::Case& c, const geometry::Plan& plan) {
  LessonStep s;
  s.topic = LessonTopic::measure;
  s.why = words(
      Words::tr("Heads differ by %1 and more, and every place on the scalp is found as a share of these "
                "two lengths."),
      {rough_length(heads_differ_mm)});
  s.title = words(Words::tr("Measure the head"));
  s.caption =
      words(Words::tr("Run a tape over the top from nasion to inion: %1. Run another from the front of one "
                      "ear canal over the top to the other: %2."),
            {tape_length(plan.tapes.nasion_inion_mm), tape_length(plan.tapes.tragus_tragus_mm)});
  s.view = forehead_view(c.side);
  s.shown.things = {Thing::skin, Thing::landmarks, Thing::tapes, Thing::labels};
  s.shown.lines = std::set<std::string>{"midline", "coronal"};
  s.shown.landmarks = std::set<std::string>{"Nz", "Iz"};
  return s;
}

LessonStep halve(const geometry::Plan& plan) {
  LessonStep s;
  s.topic = LessonTopic::halve;
  s.why = words(Words::tr(
      "The vertex lies at half of each length on any head, so whoever has a tape can find it again."));
  s.title = words(Words::tr("Halve the first tape"));
  s.caption = words(Words::tr("Half of %1 is %2. Make a short line across the midline there."),
                    {tape_length(plan.tapes.nasion_inion_mm), half_of_tape(plan.tapes.nasion_inion_mm)});
  s.view = View::above;
  s.shown.things = {Thing::skin, Thing::landmarks, Thing::tapes, Thing::labels};
  s.shown.lines = std::set<std::string>{"midline"};
  s.shown.landmarks = std::set<std::string>{"Nz", "Iz"};  // the vertex is not there yet
  s.pencil = {{vertex_of(plan), plan.axes.right, half_of_tape(plan.tapes.nasion_inion_mm)}};
  return s;
}

LessonStep cross(const geometry::Plan& plan) {
  LessonStep s;
  s.topic = LessonTopic::cross;
  s.why = words(Words::tr(
      "One tape alone tells how far forward the vertex lies, the other how far to the side; it takes both."));
  s.title = words(Words::tr("Cross at the vertex"));
  s.caption = words(
      Words::tr(
          "Half of %1 is %2. Where both halves cross is the vertex. If the two tapes do not agree, move "
          "the mark and measure again until they do."),
      {tape_length(plan.tapes.tragus_tragus_mm), half_of_tape(plan.tapes.tragus_tragus_mm)});
  s.view = View::above;
  s.shown.things = {Thing::skin, Thing::landmarks, Thing::tapes, Thing::labels};
  s.shown.lines = std::set<std::string>{"midline", "coronal"};
  s.shown.landmarks = std::set<std::string>{"Nz", "Iz", "Cz"};
  s.pencil = {{vertex_of(plan), plan.axes.right, ""}, {vertex_of(plan), plan.axes.front, ""}};
  return s;
}

LessonStep offset(const geometry::Case& c, const geometry::Plan& plan) {
  LessonStep s;
  s.topic = LessonTopic::offset;
  s.why = words(Words::tr(
      "The part of the brain that moves a hand lies to the side of the vertex, on the side across from that "
      "hand."));
  s.title = words(Words::tr("Go toward the ear"));
  s.caption =
      words(c.side == Side::left ? Words::tr("From the vertex go %1 along the tape toward the left ear.")
                                 : Words::tr("From the vertex go %1 along the tape toward the right ear."),
            {tape_length(c.search.lateral_mm)});
  s.view = View::above;
  s.shown.things = {Thing::skin, Thing::landmarks, Thing::tapes, Thing::labels};
  s.shown.lines = std::set<std::string>{"coronal", "lateral"};
  s.shown.landmarks = std::set<std::string>{"Cz"};
  for (const auto& line : plan.lines)
    if (line.name == "lateral" && !line.points.empty())
      s.pencil = {{line.points.back(), plan.axes.front, tape_length(c.search.lateral_mm)}};
  return s;
}

LessonStep forward(const geometry::Case& c, const geometry::Plan& plan) {
  LessonStep s;
  s.topic = LessonTopic::forward;
  s.why = words(Words::tr(
      "The coil is turned because the fold of the brain that moves the hand runs aslant: with the coil "
      "about square to it a pulse of the least output is answered."));
  s.title = words(Words::tr("Go forward, lay the coil"));
  const double mm = c.search.anterior_mm;
  s.caption = words(
      mm < 0 ? Words::tr("Then go %1 backward, along the midline's direction. The search starts here. Lay "
                         "the coil flat on it, its front edge turned %2 toward the midline.")
             : Words::tr("Then go %1 forward, along the midline's direction. The search starts here. Lay "
                         "the coil flat on it, its front edge turned %2 toward the midline."),
      {tape_length(std::abs(mm)), in_degrees(c.coil.angle_deg)});
  s.view = View::square_on;
  s.close = CloseLook{middle_of(vertex_of(plan), plan.start.pulse), coil_across_mm};
  s.shown.things = {Thing::skin, Thing::landmarks, Thing::tapes, Thing::start,
                    Thing::coil, Thing::angle,     Thing::labels};
  s.shown.coil_on = CoilOn::start;
  s.shown.lines = std::set<std::string>{"lateral", "anterior"};
  s.shown.landmarks = std::set<std::string>{"Cz"};
  return s;
}

LessonStep grid(const geometry::Case& c, const geometry::Plan& plan) {
  LessonStep s;
  s.topic = LessonTopic::grid;
  s.why = words(
      Words::tr("Where the hand answers differs from person to person by %1 and more; only trying tells."),
      {rough_length(hands_differ_mm)});
  s.title = words(Words::tr("Draw the search grid"));
  const bool marks = c.search.grid_on == geometry::GridOn::edge_marks;
  s.caption = words(
      marks ? Words::tr("Mark the coil's edge, and around it eight more points, %1 apart: nine places to "
                        "try, one after the other.")
            : Words::tr("Mark the pulse point, and around it eight more points, %1 apart: nine places to "
                        "try, one after the other."),
      {tape_length(c.search.pitch_mm)});
  s.view = View::square_on;
  s.close = CloseLook{middle_of(plan.start.pulse, plan.start.edge), marks_across_mm};
  if (const std::string shift = shift_sentence(plan.start, c.search.drawn_by, c.coil); !shift.empty())
    s.caption += " " + shift;
  s.shown.things = {Thing::skin,       Thing::grid,   Thing::start, Thing::coil,
                    Thing::edge_marks, Thing::wanted, Thing::labels};
  s.shown.only_rule = c.coil.laid_by;
  s.shown.coil_on = CoilOn::start;
  return s;
}

LessonStep twitch(const geometry::Case& c, const geometry::Plan& plan) {
  LessonStep s;
  s.topic = LessonTopic::twitch;
  s.why = words(Words::tr(
      "The twitch shows on this person where a pulse reaches the part that moves the hand. A tape cannot."));
  s.title = words(Words::tr("Find the hotspot"));
  s.caption = words(
      c.side == Side::left
          ? Words::tr(
                "One pulse at a time, the technician watches the thumb and index finger of the relaxed right "
                "hand. The place that twitches steadily is the hotspot.")
          : Words::tr(
                "One pulse at a time, the technician watches the thumb and index finger of the relaxed left "
                "hand. The place that twitches steadily is the hotspot."));
  s.view = View::square_on;
  s.close = CloseLook{middle_of(plan.hotspot.pulse, plan.hotspot.edge), marks_across_mm};
  s.shown.things = {Thing::skin,  Thing::grid,   Thing::hotspot, Thing::coil,
                    Thing::angle, Thing::wanted, Thing::labels};
  s.shown.coil_on = CoilOn::hotspot;
  return s;
}

LessonStep site(const geometry::Case& c, const geometry::Plan& plan, Side treated) {
  LessonStep s;
  s.topic = LessonTopic::site;
  s.why = words(Words::tr(
      "A distance from the place that answered carries over what the tapes had missed; one from the vertex "
      "would miss it again."));
  s.view = View::square_on;
  // Without the coil, which would hide the way.
  s.shown.things = {Thing::skin,    Thing::landmarks, Thing::tapes,
                    Thing::hotspot, Thing::treatment, Thing::labels};
  s.close = CloseLook{middle_of(plan.hotspot.pulse, plan.treatment.pulse), coil_across_mm};
  s.shown.landmarks = std::set<std::string>{"Cz", treated == Side::left ? "F3" : "F4"};
  if (c.treatment.rule == geometry::TreatmentRule::forward) {
    s.title = words(Words::tr("Go forward to the site"));
    s.caption = words(
        Words::tr("From the hotspot go %1 forward, side by side with the midline. This is the treatment "
                  "site."),
        {tape_length(c.treatment.distance_mm)});
    s.shown.lines = std::set<std::string>{"treatment"};
  } else {
    const std::string label = geometry::canonical_label(c.treatment.label).value_or(c.treatment.label);
    s.title = words(Words::tr("Find the site"));
    s.caption = words(Words::tr("The treatment site is the landmark %1, measured out with tapes."), {label});
    s.shown.things.erase(Thing::tapes);
    s.shown.landmarks->insert(label);
  }
  return s;
}

LessonStep mark_edge(const geometry::Case& c, const geometry::Plan& plan, Side treated) {
  LessonStep s;
  s.topic = LessonTopic::mark_edge;
  s.why = words(Words::tr(
      "The coil hides its own centre, so its edge needs a mark. And the coil is flat, the head round: the "
      "edge hangs in the air, and tape, drop and nearest come down at three places."));
  s.title = words(Words::tr("Mark the coil's edge"));
  const std::string reach = tape_length(c.coil.centre_to_edge_mm);
  switch (c.treatment.drawn_by) {
    case MarkRule::tape:
      s.caption = words(
          Words::tr(
              "From the site run a tape %1 along the skin, in the direction of the coil's front, and mark."),
          {reach});
      break;
    case MarkRule::drop:
      s.caption = words(
          Words::tr("The edge is %1 from the coil's centre. Look straight down past it and mark the skin."),
          {reach});
      break;
    case MarkRule::nearest:
      s.caption =
          words(Words::tr("The edge is %1 from the coil's centre. Mark the skin nearest to it."), {reach});
      break;
  }
  if (const std::string shift = shift_sentence(plan.treatment, c.treatment.drawn_by, c.coil); !shift.empty())
    s.caption += " " + shift;
  else if (const auto& mark = plan.treatment.edge_mark.by(c.coil.laid_by))
    s.caption +=
        " " +
        words(Words::tr("The gap between edge and skin is %1 there, so do it the same way at every visit."),
              {small_length((*mark - plan.treatment.edge).norm())});
  s.view = forehead_view(treated);
  s.shown.only_rule = c.coil.laid_by;
  s.shown.things = {Thing::skin,       Thing::treatment, Thing::coil,  Thing::angle,
                    Thing::edge_marks, Thing::wanted,    Thing::labels};
  return s;
}

}  // namespace

std::vector<LessonStep> lesson(const geometry::Case& the_case, const geometry::Plan& plan) {
  const Side treated = geometry::side_of(plan.treatment);
  return {measure(the_case, plan),
          halve(plan),
          cross(plan),
          offset(the_case, plan),
          forward(the_case, plan),
          grid(the_case, plan),
          twitch(the_case, plan),
          site(the_case, plan, treated),
          mark_edge(the_case, plan, treated)};
}

}  // namespace scalpmark::viewer
