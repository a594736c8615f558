#include "viewer/window/steps/verdict.h"

#include <QCoreApplication>
#include <cmath>

#include "viewer/words/check_words.h"
#include "viewer/words/numbers.h"
#include "viewer/words/words.h"

namespace scalpmark::window {

namespace {

// What lupdate finds these texts under.
class VerdictWords {
  Q_DECLARE_TR_FUNCTIONS(VerdictWords)
};

}  // namespace

VerdictText verdict_text(const std::optional<geometry::Check>& check, const QString& doubt) {
  VerdictText text;
  if (!check) {
    text.headline = VerdictWords::tr("No check yet");
    text.reason =
        doubt.isEmpty()
            ? VerdictWords::tr("Click today's site mark and edge mark, or enter tape distances to them.")
            : doubt;
    return text;
  }
  using geometry::Verdict;
  text.good = check->verdict == Verdict::good;
  // A sign beside the words, so that the verdict does not hang on a colour.
  switch (check->verdict) {
    case Verdict::good:
      text.headline = VerdictWords::tr("\u2713 On the site");
      break;
    case Verdict::pulse_off:
      text.headline = VerdictWords::tr("\u2717 Move the coil");
      break;
    case Verdict::angle_off:
      text.headline = VerdictWords::tr("\u2717 Turn the coil");
      break;
    case Verdict::both_off:
      text.headline = VerdictWords::tr("\u2717 Move and turn the coil");
      break;
  }
  text.pulse = VerdictWords::tr("Pulse %1 mm from the site")
                   .arg(QString::fromStdString(viewer::millimetres(check->pulse_off_mm)));
  const long degrees = std::lround(check->angle_deg), off = std::lround(std::abs(check->angle_error_deg));
  text.angle = off == 0
                   ? VerdictWords::tr("Coil %1\u00b0 to the midline, as planned").arg(degrees)
                   : VerdictWords::tr("Coil %1\u00b0 to the midline, %2\u00b0 off").arg(degrees).arg(off);
  text.reason = viewer::translated(viewer::check_sentence(*check));
  if (!doubt.isEmpty()) {
    text.good = false;
    text.headline = VerdictWords::tr("? Not sure");
    text.reason = doubt;
  }
  return text;
}

}  // namespace scalpmark::window
