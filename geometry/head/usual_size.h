#pragma once

#include <optional>

#include "geometry/base/message.h"
#include "geometry/head/head.h"
#include "geometry/head/scale.h"

namespace scalpmark::geometry {

/// What callipers would read, mm: length from the forehead's foremost point on the midline tape to the tape's
/// farthest point at the back; breadth, the widest of the coronal tape and the tape around; height from the
/// tragi up to the vertex.
struct HeadSize {
  double length_mm = 0, breadth_mm = 0, height_mm = 0;
};
[[nodiscard]] HeadSize size_of(const Head& head);

enum class TapeKind { nasion_inion, tragus_tragus, circumference };

/// The tape that, if it was misread, would put a head right.
struct TapeAgain {
  TapeKind tape = TapeKind::nasion_inion;
  std::optional<double> about_mm;  ///< what it would then read, where other tapes say it
};

/// Each tape in turn is left out: the one without which the others are the most usual, if the head they make
/// then is no smaller or larger than nearly all adults'. `head` is what the tapes were entered for, scaled to
/// them or not: tapes stand to sizes as on ellipses, set by what it measures itself, and a usual head is the
/// one of its shape that has the tapes surveys found on average. Empty where no single tape would do.
[[nodiscard]] std::optional<TapeAgain> tape_to_take_again(const Head& head, const MeasuredTapes& entered);

struct SizeCaution {
  Message sentence;
  std::optional<TapeAgain> again;
};

/// Said where the tapes, as entered, make a head whose length, breadth or height is off the usual head's by
/// more than three standard deviations of large surveys, men and women in one (memory), and two of what hands
/// add that feel for the points and read the tapes; and where one tape is off what the others say of it by
/// more than three standard deviations of both. Measured on simulated adults whose three tapes are read so,
/// to the half centimetre (tests/geometry/head/usual_size_test.cpp): 3 to 4 of 100 honest ones draw a
/// caution; of single slips of 5 cm 3 of 4 are named alone, 1 of 200 wrongly, 1 of 7 passes in silence. Empty
/// where all is usual, without tapes, and where no ellipsoid has them.
[[nodiscard]] std::optional<SizeCaution> size_caution(const Head& head, const MeasuredTapes& entered);

/// "nasion-inion", ...
[[nodiscard]] Message in_words(TapeKind tape);

}  // namespace scalpmark::geometry
