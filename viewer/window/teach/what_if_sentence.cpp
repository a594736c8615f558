#include "viewer/window/teach/what_if_sentence.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

#include "viewer/window/fields/length_text.h"
#include "viewer/words/numbers.h"
#include "viewer/words/words.h"

namespace scalpmark::window {

using geometry::MarkRule;
using geometry::Misread;

namespace {

// What lupdate finds these texts under.
class WhatIf {
  Q_DECLARE_TR_FUNCTIONS(WhatIf)
};

QString length(double mm, LengthUnit unit) {
  return length_with_unit(std::abs(mm), unit);
}

QString angle_text(double deg) {
  return QString::fromStdString(viewer::coil_angle(deg));
}

QString rule_in_words(MarkRule rule) {
  return viewer::translated(geometry::in_words(rule));
}

QString name_of(Misread which) {
  switch (which) {
    case Misread::lateral:
      return WhatIf::tr("from the vertex toward the ear");
    case Misread::anterior:
      return WhatIf::tr("forward to the search start");
    case Misread::treatment:
      return WhatIf::tr("forward from the hotspot");
    case Misread::centre_to_edge:
      break;
  }
  return WhatIf::tr("from the site to the edge mark");
}

QString cause_of(const viewer::VertexOff& m, LengthUnit unit) {
  const QString way = m.right_mm == 0  ? (m.forward_mm < 0 ? WhatIf::tr("back") : WhatIf::tr("forward"))
                      : m.right_mm < 0 ? WhatIf::tr("to the patient's left")
                                       : WhatIf::tr("to the patient's right");
  return WhatIf::tr("With the vertex marked %1 too far %2")
      .arg(length(std::hypot(m.forward_mm, m.right_mm), unit), way);
}

QString cause_of(const viewer::TapeMisread& m, LengthUnit unit) {
  return (m.by_mm < 0 ? WhatIf::tr("With the tape %1 read %2 too short")
                      : WhatIf::tr("With the tape %1 read %2 too long"))
      .arg(name_of(m.which), length(m.by_mm, unit));
}

QString cause_of(const viewer::CoilTurned& m) {
  if (m.about_centre)
    return (m.by_deg < 0 ? WhatIf::tr("With the coil turned %1\u00b0 away from the midline about its centre")
                         : WhatIf::tr("With the coil turned %1\u00b0 toward the midline about its centre"))
        .arg(std::lround(std::abs(m.by_deg)));
  return (m.by_deg < 0
              ? WhatIf::tr("With the coil turned %1\u00b0 away from the midline and its edge on the mark")
              : WhatIf::tr("With the coil turned %1\u00b0 toward the midline and its edge on the mark"))
      .arg(std::lround(std::abs(m.by_deg)));
}

QString cause_of(const viewer::CapSlipped& m, LengthUnit unit) {
  const geometry::CapMove& by = m.move;
  if (by.turn_right_deg != 0)
    return (by.turn_right_deg < 0
                ? WhatIf::tr("With the cap turned, its arrow %1\u00b0 to the patient's left")
                : WhatIf::tr("With the cap turned, its arrow %1\u00b0 to the patient's right"))
        .arg(std::lround(std::abs(by.turn_right_deg)));
  const QString way = by.right_mm == 0  ? (by.forward_mm < 0 ? WhatIf::tr("back") : WhatIf::tr("forward"))
                      : by.right_mm < 0 ? WhatIf::tr("to the patient's left")
                                        : WhatIf::tr("to the patient's right");
  return WhatIf::tr("With the cap slid %1 %2").arg(length(std::hypot(by.forward_mm, by.right_mm), unit), way);
}

QString cause_of(const viewer::LookedAside& m) {
  const QString way = m.right_deg > 0   ? WhatIf::tr("from the coil's right")
                      : m.right_deg < 0 ? WhatIf::tr("from the coil's left")
                      : m.front_deg < 0 ? WhatIf::tr("from the handle's side")
                                        : WhatIf::tr("from the coil's front");
  return WhatIf::tr("With the edge looked at %1, %2\u00b0 off the coil's axis")
      .arg(way)
      .arg(std::lround(std::hypot(m.front_deg, m.right_deg)));
}

QString cause_of(const viewer::StandsOff& m, LengthUnit unit) {
  if (m.gap_mm > 0)
    return WhatIf::tr("With %1 more of hair or air under the coil").arg(length(m.gap_mm, unit));
  return (m.tilt.roll_deg > 0 ? WhatIf::tr("With the coil's left wing lifted by %1\u00b0")
                              : WhatIf::tr("With the coil's right wing lifted by %1\u00b0"))
      .arg(std::lround(std::abs(m.tilt.roll_deg)));
}

/// What is left of the field, as the model's.
QString field_of(const viewer::MistakeOutcome& outcome) {
  if (!outcome.field_left) return {};
  return QLatin1Char(' ') +
         WhatIf::tr(
             "In a round model head %1 % of the field is left at the wanted place, in its own direction.")
             .arg(std::lround(100 * std::max(0.0, *outcome.field_left)))
             .replace(QStringLiteral(" %"), QStringLiteral("\u00a0%"));
}

}  // namespace

QString what_if_title(const viewer::Mistake& mistake) {
  switch (mistake.index()) {
    case 0:
      return WhatIf::tr("What if the vertex is off?");
    case 1:
      return WhatIf::tr("What if a tape is misread?");
    case 2:
      return WhatIf::tr("What if the coil is turned?");
    case 3:
      return WhatIf::tr("What if the rules are mixed?");
    case 4:
      return WhatIf::tr("What if the cap has slipped?");
    case 5:
      return WhatIf::tr("What if one looks from aside?");
    default:
      return WhatIf::tr("What if the coil is not on the skin?");
  }
}

QString what_if_sentence(const viewer::MistakeOutcome& outcome, const geometry::Case& the_case,
                         LengthUnit unit) {
  QString cause;
  if (const auto* rule = std::get_if<viewer::OtherRule>(&outcome.mistake))
    cause = WhatIf::tr("With the mark made by the %1 rule and the coil laid on it by the %2 rule")
                .arg(rule_in_words(the_case.treatment.drawn_by), rule_in_words(rule->laid_by));
  else if (const auto* vertex = std::get_if<viewer::VertexOff>(&outcome.mistake))
    cause = cause_of(*vertex, unit);
  else if (const auto* tape = std::get_if<viewer::TapeMisread>(&outcome.mistake))
    cause = cause_of(*tape, unit);
  else if (const auto* cap = std::get_if<viewer::CapSlipped>(&outcome.mistake))
    cause = cause_of(*cap, unit);
  else if (const auto* aside = std::get_if<viewer::LookedAside>(&outcome.mistake))
    cause = cause_of(*aside);
  else if (const auto* off = std::get_if<viewer::StandsOff>(&outcome.mistake))
    cause = cause_of(*off, unit);
  else
    cause = cause_of(std::get<viewer::CoilTurned>(outcome.mistake));
  const QString where =
      outcome.meant_on == viewer::CoilOn::start
          ? WhatIf::tr("the search starts %1 off").arg(length(outcome.result.off_mm, unit))
          : WhatIf::tr("the pulse goes %1 off the treatment site").arg(length(outcome.result.off_mm, unit));
  const auto really = static_cast<double>(std::lround(outcome.result.really.angle_deg)),
             meant = static_cast<double>(std::lround(outcome.meant.angle_deg));
  const QString angle =
      really == meant
          ? WhatIf::tr("the coil lies at %1, as wanted").arg(angle_text(really))
          : WhatIf::tr("the coil lies at %1 instead of %2").arg(angle_text(really), angle_text(meant));
  const QString said = WhatIf::tr("%1, %2, and %3.").arg(cause, where, angle) + field_of(outcome);
  if (!outcome.left_by_search) return said;
  return WhatIf::tr(
             "%1 The search by twitch then finds another spot to answer, and the site is still off by %2.")
      .arg(said, length(outcome.left_by_search->left_mm, unit));
}

}  // namespace scalpmark::window
