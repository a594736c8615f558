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

QString cause_of(const viewer::OtherRule& m, const geometry::Case& the_case) {
  return WhatIf::tr("With the mark made by the %1 rule and the coil laid on it by the %2 rule")
      .arg(rule_in_words(the_case.treatment.drawn_by), rule_in_words(m.laid_by));
}

QString cause_of(const viewer::Mistake& mistake, const geometry::Case& the_case, LengthUnit unit) {
  if (const auto* rule = std::get_if<viewer::OtherRule>(&mistake)) return cause_of(*rule, the_case);
  if (const auto* vertex = std::get_if<viewer::VertexOff>(&mistake)) return cause_of(*vertex, unit);
  if (const auto* tape = std::get_if<viewer::TapeMisread>(&mistake)) return cause_of(*tape, unit);
  if (const auto* cap = std::get_if<viewer::CapSlipped>(&mistake)) return cause_of(*cap, unit);
  if (const auto* aside = std::get_if<viewer::LookedAside>(&mistake)) return cause_of(*aside);
  if (const auto* off = std::get_if<viewer::StandsOff>(&mistake)) return cause_of(*off, unit);
  return cause_of(std::get<viewer::CoilTurned>(mistake));
}

/// Within a sentence.
QString uncapitalised(const QString& text) {
  return text.isEmpty() ? text : text.left(1).toLower() + text.mid(1);
}

QString causes_of(const viewer::MistakeOutcome& outcome, const geometry::Case& the_case, LengthUnit unit) {
  QString all = cause_of(outcome.mistakes.front(), the_case, unit);
  for (std::size_t i = 1; i < outcome.mistakes.size(); ++i)
    all = WhatIf::tr("%1, and also %2", "two mistakes")
              .arg(all, uncapitalised(cause_of(outcome.mistakes[i], the_case, unit)));
  return all;
}

/// What is left of the field, as the model's. The strongest place lies a little aside of the coil's centre,
/// and a small tilt can bring it nearer: what is then over the whole is no gain worth a number.
QString field_of(const viewer::MistakeOutcome& outcome) {
  if (!outcome.field_left) return {};
  const long percent = std::lround(100 * std::max(0.0, *outcome.field_left));
  if (percent >= 100)
    return QLatin1Char(' ') +
           WhatIf::tr("In a round model head all of the field is left at the wanted place.");
  return QLatin1Char(' ') +
         WhatIf::tr(
             "In a round model head %1 % of the field is left at the wanted place, in its own direction.")
             .arg(percent)
             .replace(QStringLiteral(" %"), QStringLiteral("\u00a0%"));
}

/// Less than a tape's last digit is none.
bool is_none(double mm) {
  return std::abs(mm) < 0.5;
}

/// How much of one part of the site's error the search takes back.
QString taken_back(double before_mm, double left_mm, LengthUnit unit) {
  constexpr double most_is = 0.5, some_is = 0.9;
  const double before = std::abs(before_mm), left = std::abs(left_mm);
  if (is_none(left)) return WhatIf::tr("all of it");
  const QString rest = length(left, unit);
  if (left <= most_is * before) return WhatIf::tr("most of it (%1 is left)").arg(rest);
  if (left <= some_is * before) return WhatIf::tr("some of it (%1 is left)").arg(rest);
  if (left <= before + 0.5) return WhatIf::tr("none of it");
  return WhatIf::tr("none of it (it becomes %1)").arg(rest);
}

QString along(double mm, LengthUnit unit) {
  return (mm < 0 ? WhatIf::tr("%1 back") : WhatIf::tr("%1 forward")).arg(length(mm, unit));
}
QString across(double outward_mm, LengthUnit unit) {
  return (outward_mm < 0 ? WhatIf::tr("%1 toward the midline") : WhatIf::tr("%1 away from the midline"))
      .arg(length(outward_mm, unit));
}

/// How much of a wrong start the search by twitch takes back, along the midline and across it.
QString search_of(const viewer::MistakeOutcome& outcome, LengthUnit unit) {
  if (!outcome.after_search) return {};
  const geometry::SiteAfterSearch& s = *outcome.after_search;
  const double forward_mm = s.unsearched_mm[0], outward_mm = s.unsearched_mm[1];
  if (is_none(s.unsearched_mm.norm())) return {};
  if (s.same_spot)
    return QLatin1Char(' ') +
           WhatIf::tr(
               "The search by twitch takes back none of it: the same spot is still the nearest, and the "
               "site is off by %1.")
               .arg(length(s.off_mm.norm(), unit));
  QString said;
  if (is_none(outward_mm))
    said = WhatIf::tr(
               "Without a search by twitch the site would be off by %1; another spot then answers, and "
               "takes back %2.")
               .arg(along(forward_mm, unit), taken_back(forward_mm, s.off_mm[0], unit));
  else if (is_none(forward_mm))
    said = WhatIf::tr(
               "Without a search by twitch the site would be off by %1; another spot then answers, and "
               "takes back %2.")
               .arg(across(outward_mm, unit), taken_back(outward_mm, s.off_mm[1], unit));
  else
    said = WhatIf::tr(
               "Without a search by twitch the site would be off by %1 and %2; another spot then "
               "answers, and takes back of the first %3, of the second %4.")
               .arg(along(forward_mm, unit), across(outward_mm, unit),
                    taken_back(forward_mm, s.off_mm[0], unit), taken_back(outward_mm, s.off_mm[1], unit));
  return QLatin1Char(' ') + said + QLatin1Char(' ') +
         WhatIf::tr("The site is then off by %1.").arg(length(s.off_mm.norm(), unit));
}

/// What each of two does alone.
QString alone_of(const viewer::MistakeOutcome& outcome, LengthUnit unit) {
  if (outcome.alone.size() < 2) return {};
  return QLatin1Char(' ') +
         WhatIf::tr("Alone, the first would put it %1 off, the second %2.")
             .arg(length(outcome.alone[0].off_mm, unit), length(outcome.alone[1].off_mm, unit));
}

}  // namespace

QString what_if_title(const std::vector<viewer::Mistake>& mistakes) {
  if (mistakes.size() > 1) return WhatIf::tr("What if two things go wrong?");
  switch (mistakes.front().index()) {
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

QString kept_sentence(const viewer::Mistake& kept, const geometry::Case& the_case, LengthUnit unit) {
  return WhatIf::tr("Kept: %1. The next one you choose comes on top.")
      .arg(uncapitalised(cause_of(kept, the_case, unit)));
}

QString what_if_sentence(const viewer::MistakeOutcome& outcome, const geometry::Case& the_case,
                         LengthUnit unit) {
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
  return WhatIf::tr("%1, %2, and %3.").arg(causes_of(outcome, the_case, unit), where, angle) +
         alone_of(outcome, unit) + field_of(outcome) + search_of(outcome, unit);
}

}  // namespace scalpmark::window
