#include "viewer/words/tolerance_words.h"

#include <cmath>

namespace scalpmark::viewer {

using geometry::Cause;
using geometry::Message;
using geometry::Number;

namespace {

Message habit_against(Cause cause, geometry::MarkRule rule) {
  switch (cause) {
    case Cause::fiducials:
      return Message::of(
          "have a second person feel for the nasion, the inion and both tragi before the tape is laid");
    case Cause::tape:
      return Message::of("read every tape twice, to the millimetre");
    case Cause::marks:
      return Message::of("use a sharp pencil and lay the coil's edge on the middle of its mark");
    case Cause::angle:
      return Message::of(
          "draw the edge mark as a line along the coil's edge, and lay the whole edge on it, so that the angle is kept");
    case Cause::rule:
      return Message::of("make the edge mark and lay the coil by the same rule (%1) at every visit",
                         in_words(rule));
    case Cause::cap:
      return Message::of("check the cap's brim and arrow against the nasion each time it is put on");
    case Cause::tilt:
      return Message::of(
          "look at the coil from the front and from the side, and close the gap on both sides alike");
  }
  return {};
}

}  // namespace

Message cause_name(Cause cause) {
  switch (cause) {
    case Cause::fiducials:
      return Message::of("Finding the four points");
    case Cause::tape:
      return Message::of("Reading the tape");
    case Cause::marks:
      return Message::of("Pencil marks");
    case Cause::angle:
      return Message::of("Coil's angle");
    case Cause::rule:
      return Message::of("Another marking rule");
    case Cause::cap:
      return Message::of("Cap put on again");
    case Cause::tilt:
      return Message::of("Coil's tilt");
  }
  return {};
}

Message tolerance_sentence(const geometry::Tolerance& t) {
  const auto cm = [](double mm) { return Number{std::abs(mm) < 0.5 ? 0.0 : mm / 10, 1, true}; };
  return Message::of("Half of the placements lie within %1 cm of the site, 95 of 100 within %2 cm.",
                     cm(t.half_mm), cm(t.most_mm));
}

Message habit_sentence(const geometry::Tolerance& t) {
  if (!t.to_halve) return Message::of("No error is entered, so no habit would change anything.");
  const auto cm = [](double mm) { return geometry::number(std::round(mm) / 10); };
  return Message::of(
      "The habit that would shrink it most: %1 (half that error, and %2 cm on average become %3 cm).",
      habit_against(t.to_halve->cause, t.rule), cm(t.first_order.mean_mm), cm(t.to_halve->halved_mm));
}

}  // namespace scalpmark::viewer
