#include "viewer/window/what_if_sentence.h"

#include <QCoreApplication>
#include <cmath>

#include "viewer/window/length_text.h"

namespace scalpmark::window {

using geometry::MarkRule;
using geometry::Misread;

namespace {

QString tr(const char* text) {
  return QCoreApplication::translate("WhatIf", text);
}

QString length(double mm, LengthUnit unit) {
  return length_with_unit(std::abs(mm), unit);
}

QString name_of(MarkRule rule) {
  return rule == MarkRule::tape ? tr("tape") : rule == MarkRule::drop ? tr("drop") : tr("nearest");
}

QString name_of(Misread which) {
  switch (which) {
    case Misread::lateral:
      return tr("from the vertex toward the ear");
    case Misread::anterior:
      return tr("forward to the search start");
    case Misread::treatment:
      return tr("forward from the hotspot");
    case Misread::centre_to_edge:
      break;
  }
  return tr("from the site to the edge mark");
}

QString cause_of(const viewer::VertexOff& m, LengthUnit unit) {
  const QString way = m.right_mm == 0  ? (m.forward_mm < 0 ? tr("back") : tr("forward"))
                      : m.right_mm < 0 ? tr("to the patient's left")
                                       : tr("to the patient's right");
  return tr("With the vertex marked %1 too far %2")
      .arg(length(std::hypot(m.forward_mm, m.right_mm), unit), way);
}

QString cause_of(const viewer::TapeMisread& m, LengthUnit unit) {
  return (m.by_mm < 0 ? tr("With the tape %1 read %2 too short") : tr("With the tape %1 read %2 too long"))
      .arg(name_of(m.which), length(m.by_mm, unit));
}

QString cause_of(const viewer::CoilTurned& m) {
  return (m.by_deg < 0 ? tr("With the coil turned %1\u00b0 away from the midline and its edge on the mark")
                       : tr("With the coil turned %1\u00b0 toward the midline and its edge on the mark"))
      .arg(std::lround(std::abs(m.by_deg)));
}

}  // namespace

QString what_if_title(const viewer::Mistake& mistake) {
  switch (mistake.index()) {
    case 0:
      return tr("What if the vertex is off?");
    case 1:
      return tr("What if a tape is misread?");
    case 2:
      return tr("What if the coil is turned?");
    default:
      return tr("What if the rules are mixed?");
  }
}

QString what_if_sentence(const viewer::Spoiled& spoiled, const geometry::Case& entered, LengthUnit unit) {
  QString cause;
  if (const auto* rule = std::get_if<viewer::OtherRule>(&spoiled.mistake))
    cause = tr("With the mark made by the %1 rule and the coil laid on it by the %2 rule")
                .arg(name_of(entered.coil.mark_rule), name_of(rule->laid_by));
  else if (const auto* vertex = std::get_if<viewer::VertexOff>(&spoiled.mistake))
    cause = cause_of(*vertex, unit);
  else if (const auto* tape = std::get_if<viewer::TapeMisread>(&spoiled.mistake))
    cause = cause_of(*tape, unit);
  else
    cause = cause_of(std::get<viewer::CoilTurned>(spoiled.mistake));
  const QString where =
      spoiled.meant_on == viewer::CoilOn::start
          ? tr("the search starts %1 off").arg(length(spoiled.result.off_mm, unit))
          : tr("the pulse goes %1 off the treatment site").arg(length(spoiled.result.off_mm, unit));
  const long really = std::lround(spoiled.result.really.angle_deg),
             meant = std::lround(spoiled.meant.angle_deg);
  const QString angle =
      really == meant
          ? tr("the coil lies at %1\u00b0 to the midline, as meant").arg(really)
          : tr("the coil lies at %1\u00b0 to the midline instead of %2\u00b0").arg(really).arg(meant);
  return tr("%1, %2, and %3.").arg(cause, where, angle);
}

}  // namespace scalpmark::window
