// One habit to mend, from the step with the largest own error and the way it is off.
#include <cmath>

#include "geometry/base/angles.h"
#include "viewer/words/exercise_words.h"
#include "viewer/words/numbers.h"

namespace scalpmark::viewer {

using geometry::Message;
using geometry::StepScore;
using geometry::Task;

namespace {

/// Whether most of it lies forward or backward (of the four points up or down), not to a side.
bool lengthwise(const StepScore& s) {
  return std::abs(s.own.forward_mm) >= std::abs(s.own.outward_mm);
}

/// Whether the angle moves the coil's front edge by more than half of all the error.
bool turned(const StepScore& s, double centre_to_edge_mm) {
  return 2 * std::abs(geometry::radians(s.own.angle_deg.value_or(0))) * centre_to_edge_mm >
         std::abs(s.own.mm);
}

Message habit_of_point(const StepScore& s) {
  if (s.step.which == 0)
    return lengthwise(s)
               ? Message::of("go down the forehead with a fingertip and mark the deepest place of the hollow")
               : Message::of("stand straight in front and mark on the middle line of the nose");
  if (s.step.which == 1)
    return lengthwise(s) ? Message::of("come up from the neck with a fingertip and mark the top of the bump")
                         : Message::of("stand straight behind and mark between both sides of the bump");
  return Message::of("look at the ear from straight beside it and mark just in front of the ear canal");
}

Message habit_of_tape(const StepScore& s) {
  const bool misread = s.misread_mm && 2 * std::abs(*s.misread_mm) > std::abs(s.own.mm);
  if (misread)
    return Message::of(
        "put the tape's zero on the point, count from the next whole centimetre, and say the reading before you type it");
  return s.own.mm > 0
             ? Message::of(
                   "pull the tape tight and lay it straight over the top: a tape that lies aside reads too long")
             : Message::of("check that the tape's end and its zero lie on the points themselves");
}

Message habit_of_vertex(const StepScore& s) {
  return lengthwise(s)
             ? Message::of("measure half of nasion-inion from both ends, and mark between where they end")
             : Message::of("measure half of tragus-tragus from both ears, and mark between where they end");
}

Message habit_of_start(const StepScore& s) {
  return lengthwise(s) ? Message::of("measure the way forward on its own, parallel to the midline")
                       : Message::of("put the tape's zero on the vertex and follow the tape down to the ear");
}

Message habit_of_grid(const StepScore& s) {
  if (s.step != step_of(geometry::GridPosition{}))
    return Message::of(
        "draw all spots from the middle one, along the midline and square to it, and measure each step");
  return Message::of(
      "measure the middle mark from the start with the tape on the skin, and look at its angle from above");
}

Message habit_of_site(const StepScore& s) {
  return lengthwise(s) ? Message::of("put the tape's zero on the hotspot and read at the mark, twice")
                       : Message::of("keep the tape parallel to the midline: look along it from above");
}

Message habit(const geometry::RightAnswers& answers, const StepScore& s) {
  const double reach_mm = answers.the_case.coil.centre_to_edge_mm;
  switch (s.step.task) {
    case Task::four_points:
      return habit_of_point(s);
    case Task::three_tapes:
      return habit_of_tape(s);
    case Task::vertex:
      return habit_of_vertex(s);
    case Task::start:
      return habit_of_start(s);
    case Task::grid:
      return habit_of_grid(s);
    case Task::hotspot:
      return Message::of(
          "lay the coil's edge over the mark that answered, at its angle, and mark under its centre");
    case Task::site:
      return habit_of_site(s);
    case Task::edge_mark:
      if (turned(s, reach_mm))
        return Message::of("set the coil's angle against the midline, looking from above, before you draw");
      return Message::of("look straight down past the coil's edge: from aside it seems to lie elsewhere");
    case Task::coil:
    case Task::coil_on_given_marks:
      if (turned(s, reach_mm))
        return Message::of("turn the coil until its centre line runs over the site mark, then look again");
      return Message::of("close one eye and look straight down past the edge at its mark");
    case Task::find_again:
      return Message::of("use all four distances, and mark where the arcs of the tape meet");
  }
  return {};
}

}  // namespace

Message habit_to_mend(const geometry::RightAnswers& answers, const geometry::Score& score) {
  bool any = false;
  for (const StepScore& s : score.steps) any = any || s.placed;
  if (!any) return Message::of("Nothing was put down, so nothing can be said of a habit.");
  if (!score.worst)
    return Message::of("No step was off by more than %1 of its own: no habit to mend shows.",
                       small_length(geometry::least_habit_mm));
  const StepScore& s = score.steps[*score.worst];
  return Message::of("Mend this first: %1 (%2). Next time, %3.", step_name(s.step),
                     offset_in_words(s.step, s.own), habit(answers, s));
}

}  // namespace scalpmark::viewer
