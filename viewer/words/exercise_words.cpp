#include "viewer/words/exercise_words.h"

#include <algorithm>
#include <cmath>
#include <vector>

#include "viewer/words/answer_words.h"
#include "viewer/words/numbers.h"

namespace scalpmark::viewer {

using geometry::Case;
using geometry::Message;
using geometry::number;
using geometry::Offset;
using geometry::Step;
using geometry::Task;

namespace {

constexpr double read_to_mm = 5;
constexpr double least_part_mm = 0.5, least_part_deg = 0.5;  // less rounds to nothing

/// As short as a column of a table: "mark front, inward" lies toward the nose and the midline.
Message mark_of_spot(const Step& step) {
  const geometry::GridPosition spot = geometry::spot_of(step);
  if (spot.row > 0)
    return spot.column > 0   ? Message::of("mark front, outward")
           : spot.column < 0 ? Message::of("mark front, inward")
                             : Message::of("mark front");
  if (spot.row < 0)
    return spot.column > 0   ? Message::of("mark back, outward")
           : spot.column < 0 ? Message::of("mark back, inward")
                             : Message::of("mark back");
  return spot.column > 0   ? Message::of("mark outward")
         : spot.column < 0 ? Message::of("mark inward")
                           : Message::of("middle mark");
}

// ---- What to do ----

Message toward_ear(geometry::Side side) {
  return side == geometry::Side::left ? Message::of("the left ear") : Message::of("the right ear");
}

Message order_of_start(const Case& c, const LengthInWords& length) {
  const double forward = c.search.anterior_mm;
  const std::string lateral = length(c.search.lateral_mm);
  if (std::abs(forward) < least_part_mm)
    return Message::of("Measure %1 from the vertex along the tape toward %2. Mark the start.", lateral,
                       toward_ear(c.side));
  return forward > 0
             ? Message::of(
                   "Measure %1 from the vertex along the tape toward %2, then %3 forward, parallel to the midline. Mark the start.",
                   lateral, toward_ear(c.side), length(forward))
             : Message::of(
                   "Measure %1 from the vertex along the tape toward %2, then %3 backward, parallel to the midline. Mark the start.",
                   lateral, toward_ear(c.side), length(-forward));
}

Message order_of_grid(const Case& c, const LengthInWords& length) {
  const std::string step = length(c.search.pitch_mm), angle = coil_angle(c.coil.angle_deg);
  if (c.search.grid_on == geometry::GridOn::pulse_points)
    return Message::of("Draw the nine pulse points, %1 from one to the next, the start in the middle.", step);
  if (c.search.drawn_by == geometry::MarkRule::tape)
    return Message::of(
        "Draw the nine edge marks: the middle one %1 along the skin from the start, at %2; the others around it, %3 from one to the next.",
        length(c.coil.centre_to_edge_mm), angle, step);
  return Message::of(
      "Draw the nine edge marks: the middle one by the %1 rule with the coil over the start, at %2; the others around it, %3 from one to the next.",
      in_words(c.search.drawn_by), angle, step);
}

Message order_of_hotspot(const Case& c) {
  const Message spot = spot_name(c.hotspot);
  if (c.search.grid_on == geometry::GridOn::pulse_points)
    return Message::of("This spot answered: %1. Mark the hotspot: where its pulse went.", spot);
  return Message::of(
      "This spot answered: %1. Mark the hotspot: where the pulse went of the coil laid over that edge mark, at %2.",
      spot, coil_angle(c.coil.angle_deg));
}

Message order_of_site(const Case& c, const LengthInWords& length) {
  if (c.treatment.rule == geometry::TreatmentRule::landmark)
    return Message::of("Find the position %1 by tape, from the four points and the vertex. Mark the site.",
                       c.treatment.label);
  return Message::of("Measure %1 forward from the hotspot, parallel to the midline. Mark the site.",
                     length(c.treatment.distance_mm));
}

Message order_of_edge_mark(const Case& c, const LengthInWords& length) {
  const std::string angle = coil_angle(c.coil.angle_deg);
  if (c.treatment.drawn_by == geometry::MarkRule::tape)
    return Message::of("Draw the edge mark for the site: %1 along the skin, at %2.",
                       length(c.coil.centre_to_edge_mm), angle);
  if (c.treatment.drawn_by == geometry::MarkRule::drop)
    return Message::of(
        "Draw the edge mark for the site with the coil over it, at %1: look straight down past its front edge (drop rule).",
        angle);
  return Message::of(
      "Draw the edge mark for the site with the coil over it, at %1: on the skin nearest to its front edge.",
      angle);
}

// ---- How far off ----

bool on_midline(const Step& step) {
  return step.task == Task::vertex || (step.task == Task::four_points && step.which < 2);
}

Message first_way(const Step& step, double mm) {
  const std::string by = small_length(std::abs(mm));
  if (step.task == Task::four_points) return mm > 0 ? Message::of("%1 up", by) : Message::of("%1 down", by);
  return mm > 0 ? Message::of("%1 forward", by) : Message::of("%1 backward", by);
}

Message second_way(const Step& step, double mm) {
  const std::string by = small_length(std::abs(mm));
  if (on_midline(step))
    return mm > 0 ? Message::of("%1 to the side of the coil", by)
                  : Message::of("%1 to the side without the coil", by);
  if (step.task == Task::four_points)
    return mm > 0 ? Message::of("%1 toward the nose", by) : Message::of("%1 toward the back", by);
  return mm > 0 ? Message::of("%1 away from the midline", by) : Message::of("%1 toward the midline", by);
}

Message turned_too_far(double deg) {
  const auto by = number(std::abs(deg), 0);
  if (std::lround(std::abs(deg)) == 1)
    return deg > 0 ? Message::of("1 degree too far toward the midline")
                   : Message::of("1 degree too far away from the midline");
  return deg > 0 ? Message::of("%1 degrees too far toward the midline", by)
                 : Message::of("%1 degrees too far away from the midline", by);
}

}  // namespace

Message task_name(Task task) {
  switch (task) {
    case Task::four_points:
      return Message::of("Four points");
    case Task::three_tapes:
      return Message::of("Three tapes");
    case Task::vertex:
      return Message::of("Vertex");
    case Task::start:
      return Message::of("Start");
    case Task::grid:
      return Message::of("Nine marks");
    case Task::hotspot:
      return Message::of("Hotspot");
    case Task::site:
      return Message::of("Site");
    case Task::edge_mark:
      return Message::of("Edge mark");
    case Task::coil:
      return Message::of("Coil on your marks");
    case Task::coil_on_given_marks:
      return Message::of("Coil on given marks");
    case Task::find_again:
      return Message::of("Lost mark");
  }
  return {};
}

Message step_name(const Step& step) {
  switch (step.task) {
    case Task::four_points:
      return step.which == 0   ? Message::of("nasion")
             : step.which == 1 ? Message::of("inion")
             : step.which == 2 ? Message::of("left tragus")
                               : Message::of("right tragus");
    case Task::three_tapes:
      return step.which == 0   ? Message::of("nasion-inion tape")
             : step.which == 1 ? Message::of("tragus-tragus tape")
                               : Message::of("tape around the head");
    case Task::vertex:
      return Message::of("vertex");
    case Task::start:
      return Message::of("start");
    case Task::grid:
      return mark_of_spot(step);
    case Task::hotspot:
      return Message::of("hotspot");
    case Task::site:
      return Message::of("site");
    case Task::edge_mark:
      return Message::of("edge mark");
    case Task::coil:
      return Message::of("coil on one's own marks");
    case Task::coil_on_given_marks:
      return Message::of("coil on given marks");
    case Task::find_again:
      return Message::of("lost mark");
  }
  return {};
}

Message task_order(const geometry::RightAnswers& answers, Task task, const LengthInWords& length) {
  const Case& c = answers.the_case;
  switch (task) {
    case Task::four_points:
      return Message::of(
          "Feel for nasion, inion and both tragi, and mark each: the hollow over the nose, the bump at the back, the skin just in front of each ear canal.");
    case Task::three_tapes:
      return Message::of(
          "Pull the tape from nasion over the top to inion, from tragus to tragus over the top, then around the head, a tenth of those tapes above each point. Type what you read.");
    case Task::vertex:
      return Message::of("Mark the vertex: half way along both long tapes at once.");
    case Task::start:
      return order_of_start(c, length);
    case Task::grid:
      return order_of_grid(c, length);
    case Task::hotspot:
      return order_of_hotspot(c);
    case Task::site:
      return order_of_site(c, length);
    case Task::edge_mark:
      return order_of_edge_mark(c, length);
    case Task::coil:
      return Message::of(
          "Lay the coil on your two marks: its front edge over the edge mark (%1 rule), its centre line over the site mark.",
          in_words(c.coil.laid_by));
    case Task::coil_on_given_marks:
      return Message::of(
          "Someone else has drawn these two marks. Lay the coil on them: its front edge over the edge mark (%1 rule), its centre line over the site mark.",
          in_words(c.coil.laid_by));
    case Task::find_again:
      return Message::of(
          "The cap was changed, and a mark is lost with it. Its note says: %1. Find its place by tape and mark it.",
          written_distances(answers.lost.written, length));
  }
  return {};
}

Message written_distances(const geometry::TapeReadings& written, const LengthInWords& length) {
  const auto said = [&](const std::optional<double>& mm) { return length(mm.value_or(0)); };
  return Message::of(
      "%1 from the vertex, %2 from the nasion, %3 from the left tragus, %4 from the right tragus",
      said(written.vertex_mm), said(written.nasion_mm), said(written.left_tragus_mm),
      said(written.right_tragus_mm));
}

Message offset_in_words(const Step& step, const Offset& offset) {
  if (asked_in(step.task) == geometry::Asks::reading) {
    const std::string by = small_length(std::abs(offset.mm));
    if (std::abs(offset.mm) < least_part_mm) return Message::of("no error");
    return offset.mm > 0 ? Message::of("%1 too long", by) : Message::of("%1 too short", by);
  }
  std::vector<Message> parts;
  if (std::abs(offset.forward_mm) >= least_part_mm) parts.push_back(first_way(step, offset.forward_mm));
  if (std::abs(offset.outward_mm) >= least_part_mm) parts.push_back(second_way(step, offset.outward_mm));
  if (std::abs(offset.angle_deg.value_or(0)) >= least_part_deg)
    parts.push_back(turned_too_far(*offset.angle_deg));
  if (parts.empty()) return Message::of("no error");
  Message all = parts.front();
  for (std::size_t i = 1; i < parts.size(); ++i) all = Message::of("%1, %2", all, parts[i]);
  return all;
}

Message pulse_sentence(const geometry::PulseScore& pulse, const geometry::Tolerance* hands) {
  Message said = Message::of("The pulse goes %1 from where it should", small_length(pulse.off.mm));
  const Message way = offset_in_words({Task::coil, 0}, pulse.off);
  if (pulse.off.mm >= least_part_mm) said = Message::of("%1 (%2)", said, way);
  if (!pulse.laid) said = Message::of("%1, the coil laid on these marks without error", said);
  const double by_rules = (pulse.aim - pulse.wanted).norm();
  if (by_rules >= 1)
    said =
        Message::of("%1; drawing and laying by two rules puts it another %2 off, which is no error of yours",
                    said, small_length(by_rules));
  if (!hands) return Message::of("%1.", said);
  return pulse.off.mm <= hands->half_mm
             ? Message::of("%1: among the better half of trials by hand on this head (%2).", said,
                           small_length(hands->half_mm))
         : pulse.off.mm <= hands->most_mm
             ? Message::of("%1: within what 95 of 100 trials by hand reach on this head (%2).", said,
                           small_length(hands->most_mm))
             : Message::of("%1: further off than 95 of 100 trials by hand on this head (%2).", said,
                           small_length(hands->most_mm));
}

Message steadiness_sentence(const std::vector<geometry::Steadiness>& steps) {
  const geometry::Steadiness* worst = nullptr;
  const auto size = [](const geometry::Steadiness& s) { return std::max(s.bias, s.spread_mm.value_or(0)); };
  for (const geometry::Steadiness& s : steps)
    if (s.spread_mm && (!worst || size(s) > size(*worst))) worst = &s;
  if (!worst)
    return Message::of("Do it again on the same head: two tries or more show whether a hand is steady.");
  const Message step = step_name(worst->step);
  const std::string bias = small_length(worst->bias), spread = small_length(*worst->spread_mm);
  const bool right = worst->bias <= geometry::least_habit_mm;
  const bool steady = *worst->spread_mm <= geometry::least_habit_mm;
  if (right && steady)
    return Message::of("Right and steady: no step is off by more than %1 on average, nor spreads by more.",
                       small_length(geometry::least_habit_mm));
  if (steady)
    return Message::of(
        "Steady but not right, at this step most: %1. The same %2 off each time (spread %3) is one habit to mend.",
        step, bias, spread);
  if (right)
    return Message::of(
        "Right on average but not steady, at this step most: %1. Tries spread by %2: take more time for it, in the same order each time.",
        step, spread);
  return Message::of("Neither right nor steady, at this step most: %1. Off by %2 on average, spread %3.",
                     step, bias, spread);
}

std::optional<Message> trained_people(const Step& step) {
  switch (step.task) {
    case Task::three_tapes:
      return Message::of("A tape is read to %1 (common practice, no source).", rough_length(read_to_mm));
    case Task::vertex:
      return Message::of("A 10-20 position found by hand spreads by 9.0 mm (17 adults; Jurcak et al. 2005).");
    case Task::hotspot:
      return Message::of(
          "A hotspot found again by pulses lies 8.1 mm away for the same examiner, 10.3 mm for another (10 adults; Sollmann et al. 2013).");
    case Task::coil:
    case Task::coil_on_given_marks:
      return trained_pulse();
    default:
      return {};
  }
}

Message trained_pulse() {
  return Message::of(
      "With cap and marks, without tracking: pulse 10.7 mm off on average, coil 6.0 degrees off (42 adults; Caulfield et al. 2022).");
}

Message hands_sentence(const geometry::Tolerance& hands) {
  return Message::of(
      "By hand on this head: half of the trials within %1, 95 of 100 within %2 (assumed errors of hands, marks on the skin).",
      small_length(hands.half_mm), small_length(hands.most_mm));
}

Message not_a_certificate() {
  return Message::of(
      "An exercise on a screen: no certificate, and no proof of how anybody works on a patient.");
}

}  // namespace scalpmark::viewer
