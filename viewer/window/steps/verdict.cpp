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

QString headline_of(geometry::Verdict verdict) {
  switch (verdict) {
    case geometry::Verdict::good:
      return VerdictWords::tr("The marks agree with the plan");
    case geometry::Verdict::pulse_off:
      return VerdictWords::tr("Move the coil");
    case geometry::Verdict::angle_off:
      return VerdictWords::tr("Turn the coil");
    case geometry::Verdict::both_off:
      return VerdictWords::tr("Move and turn the coil");
  }
  return {};
}

}  // namespace

VerdictText verdict_text(const std::optional<geometry::Check>& check, const QString& problem,
                         const QString& doubt, const geometry::Tolerance* by_hand, LengthUnit unit) {
  VerdictText text;
  if (!check) {
    text.headline = VerdictWords::tr("No check yet");
    text.reason =
        !problem.isEmpty() ? problem
        : doubt.isEmpty()
            ? VerdictWords::tr("Click today's site mark and edge mark, or enter tape distances to them.")
            : doubt;
    return text;
  }
  text.kind = check->verdict == geometry::Verdict::good ? VerdictText::Kind::agrees : VerdictText::Kind::move;
  text.headline = headline_of(check->verdict);
  text.pulse = VerdictWords::tr("Pulse %1 from the site").arg(length_with_unit(check->pulse_off_mm, unit));
  const QString angle = QString::fromStdString(viewer::coil_angle(check->angle_deg));
  const long off = std::lround(std::abs(check->angle_error_deg));
  text.angle = off == 0 ? VerdictWords::tr("Coil %1, as wanted").arg(angle)
                        : VerdictWords::tr("Coil %1, %2\u00b0 off").arg(angle).arg(off);
  text.reason = viewer::translated(viewer::check_sentence(*check, in_unit(unit)));
  if (by_hand) text.by_hand = viewer::translated(viewer::by_hand_sentence(*by_hand, in_unit(unit)));
  if (!doubt.isEmpty()) {
    text.kind = VerdictText::Kind::unsure;
    text.headline = VerdictWords::tr("Not sure");
    text.reason = doubt;
  }
  return text;
}

}  // namespace scalpmark::window
