#include "viewer/words/strips_words.h"

namespace scalpmark::viewer {

using geometry::Message;

namespace {

// In millimetres whatever the unit: a tape's decimal would hide what is compared.
geometry::Number tenths(double mm) {
  return geometry::number(mm, 1);
}

}  // namespace

Message strips_sentence(const geometry::WithStrips& s) {
  constexpr double nothing_mm = 0.05;  // less than the figures show
  if (s.tapes_mean_mm - s.mean_mm < nothing_mm)
    return Message::of(
        "Strips of paper in place of a tape that is read gain nothing here: measuring alone puts the pulse %1 mm off on average with them, %2 mm with a tape.",
        tenths(s.alone_mm), tenths(s.tapes_alone_mm));
  return Message::of(
      "Strips of paper in place of a tape that is read: measuring alone puts the pulse %1 mm off on average instead of %2 mm, and all causes together %3 mm instead of %4 mm.",
      tenths(s.alone_mm), tenths(s.tapes_alone_mm), tenths(s.mean_mm), tenths(s.tapes_mean_mm));
}

}  // namespace scalpmark::viewer
