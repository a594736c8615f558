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

/// Each tape in turn is left out, and the most usual head that has the others looked for: the one without
/// which the head is the most usual, if it then is no smaller or larger than nearly all adults'. `head` is
/// what the tapes were entered for, scaled to them or not: tapes stand to sizes as on ellipses, set by what
/// it measures itself. Empty where no single tape would do.
[[nodiscard]] std::optional<TapeAgain> tape_to_take_again(const Head& head, const MeasuredTapes& entered);

struct SizeCaution {
  Message sentence;
  std::optional<TapeAgain> again;
};

/// Said where the tapes, as entered, make a head whose length, breadth or height is outside three standard
/// deviations of large surveys, men's and women's. Empty where all is usual, without tapes, and where no
/// ellipsoid has them.
[[nodiscard]] std::optional<SizeCaution> size_caution(const Head& head, const MeasuredTapes& entered);

/// "nasion-inion", ...
[[nodiscard]] Message in_words(TapeKind tape);

}  // namespace scalpmark::geometry
