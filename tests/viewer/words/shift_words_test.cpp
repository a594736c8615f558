#include "viewer/words/shift_words.h"

#include <catch2/catch.hpp>

#include "tests/support/sentence.h"

using namespace scalpmark;
using geometry::MarkRule;
using geometry::Placement;
using viewer::shift_sentence;

namespace {

/// A placement whose pulse lies so far along the front axis (y) and to its right (x) from where it was
/// wanted.
Placement shifted(double front_mm, double right_mm = 0) {
  Placement p;
  p.pulse = {right_mm, front_mm, 0};
  p.wanted_to_pulse_mm = p.pulse.norm();
  p.tape_to_draw_mm = 65.2;
  return p;
}

geometry::CoilSetup laid_by(MarkRule rule) {
  geometry::CoilSetup coil;
  coil.laid_by = rule;
  return coil;
}

}  // namespace

TEST_CASE("where a coil laid by eye has its pulse, and how to draw the mark instead") {
  CHECK(
      shift_sentence(shifted(-5.4), MarkRule::tape, laid_by(MarkRule::drop)) ==
      "Laid by eye over this mark, the pulse lands 0.5 cm behind the point that was measured, toward the coil's "
      "handle. Draw the mark 6.5 cm along the skin instead of 6.0 cm, or turn it into a drop mark once the coil is "
      "on.");
  CHECK(
      shift_sentence(shifted(7), MarkRule::tape, laid_by(MarkRule::nearest)) ==
      "Laid by eye over this mark, the pulse lands 0.7 cm in front of the point that was measured, toward the "
      "coil's front edge. Draw the mark 6.5 cm along the skin instead of 6.0 cm, or make it anew, on the skin nearest "
      "to the edge, once the coil is on.");
}

TEST_CASE("a mark drawn by eye and laid by another rule is to be made as the coil is laid") {
  CHECK(
      shift_sentence(shifted(5.4), MarkRule::drop, laid_by(MarkRule::tape)) ==
      "Laid with a tape over this mark, the pulse lands 0.5 cm in front of the point that was measured, toward "
      "the coil's front edge. Mark it with a tape of 6.0 cm along the skin instead, as the coil is laid.");
  CHECK(
      shift_sentence(shifted(-12), MarkRule::nearest, laid_by(MarkRule::drop)) ==
      "Laid by eye over this mark, the pulse lands 1.2 cm behind the point that was measured, toward the coil's "
      "handle. Mark it straight down past the coil's edge instead, as the coil is laid.");
  CHECK(
      shift_sentence(shifted(12), MarkRule::drop, laid_by(MarkRule::nearest)).find("Mark the skin nearest") !=
      std::string::npos);
}

TEST_CASE(
    "what lies beside the front axis is neither behind nor in front, and no tape is named where none helps") {
  Placement p = shifted(-2, 9);
  p.tape_to_draw_mm.reset();
  const std::string text = shift_sentence(p, MarkRule::tape, laid_by(MarkRule::drop));
  CHECK(
      text ==
      "Laid by eye over this mark, the pulse lands 0.9 cm to the side of the point that was measured. No tape "
      "makes up for it here: make the mark anew once the coil is on.");
}

TEST_CASE("nothing is said of less than a pencil mark, or where one rule draws and lays") {
  CHECK(shift_sentence(shifted(-0.9), MarkRule::tape, laid_by(MarkRule::drop)).empty());
  CHECK_FALSE(shift_sentence(shifted(-1.1), MarkRule::tape, laid_by(MarkRule::drop)).empty());
  CHECK(shift_sentence(shifted(-9), MarkRule::drop, laid_by(MarkRule::drop)).empty());
}
