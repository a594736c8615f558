#include "viewer/window/teach/what_if_picture.h"

#include <QCoreApplication>

#include "viewer/words/numbers.h"

namespace scalpmark::window {

using geometry::Misread;
using viewer::CoilOn;
using viewer::Role;
using viewer::Shape;
using viewer::Thing;

namespace {

// What lupdate finds these texts under.
class WhatIfPicture {
  Q_DECLARE_TR_FUNCTIONS(WhatIfPicture)
};

/// The tapes that the mistakes are about.
std::set<std::string> lines_of(const std::vector<viewer::Mistake>& mistakes) {
  std::set<std::string> lines;
  for (const viewer::Mistake& mistake : mistakes) {
    if (geometry::is_before_search(mistake)) lines.insert({"lateral", "anterior"});
    if (const auto* tape = std::get_if<viewer::TapeMisread>(&mistake))
      if (tape->which == Misread::treatment) lines.insert("treatment");
  }
  return lines;
}

namespace order = viewer::label_priority;

viewer::Note mark(Shape shape, Role role, const Eigen::Vector3d& at, const Eigen::Vector3d& along,
                  const QString& text, int priority) {
  viewer::Note note;
  note.shape = shape;
  note.role = role;
  note.at = at;
  note.along = along;
  note.text = text.toStdString();
  note.priority = priority;
  return note;
}

viewer::Note line(const std::vector<Eigen::Vector3d>& along, double length_mm) {
  viewer::Note note;
  note.line = along;
  note.text = viewer::tape_length(length_mm);
  return note;
}

/// Pulse points and edge marks; where the vertex is to blame, that too.
StageLook::CloseUp close_up(const viewer::MistakeOutcome& outcome, const geometry::Plan& plan) {
  StageLook::CloseUp close;
  close.gaze = viewer::gaze(viewer::View::square_on, plan.axes, outcome.meant);
  close.at = 0.25 * (outcome.result.meant + outcome.result.really.pulse + outcome.meant.edge +
                     outcome.result.really.edge);
  close.across_mm = 150;
  if (outcome.result.vertex) {
    close.at += 0.3 * (*outcome.result.vertex - close.at);
    close.across_mm = 180;
  }
  if (outcome.made<viewer::StandsOff>()) {
    // From before its front, where gaps and lifted wings are seen.
    close.gaze.toward_eye = (outcome.meant.front + 0.25 * outcome.meant.normal).normalized();
    close.gaze.up = outcome.meant.normal;
    close.at = outcome.meant.pulse;
    close.across_mm = 200;
  }
  if (outcome.result.sight) {
    // From beside the coil, where a line that leans is seen to lean.
    const auto& sight = *outcome.result.sight;
    const geometry::Placement& really = outcome.result.really;
    const Eigen::Vector3d lean = sight.eye - sight.edge;
    const Eigen::Vector3d right = really.front.cross(really.normal);
    const bool leans_along = std::abs(lean.dot(really.front)) > std::abs(lean.dot(right));
    const Eigen::Vector3d outward_right = right.dot(really.inward) < 0 ? right : Eigen::Vector3d(-right);
    close.gaze.toward_eye =
        (0.9 * (leans_along ? outward_right : really.front) + 0.5 * really.normal).normalized();
    close.gaze.up = really.normal;
    close.at = 0.5 * (sight.skin + sight.eye);
    close.across_mm = 260;
  }
  return close;
}

/// Of two mistakes at once: where each would put the pulse alone.
void add_alone(const viewer::MistakeOutcome& outcome, viewer::Shown& shown) {
  for (std::size_t i = 0; i < outcome.alone.size(); ++i) {
    const viewer::MistakeAlone& alone = outcome.alone[i];
    if (alone.pulse_line.empty()) continue;
    const QString off = QString::fromStdString(viewer::tape_length(alone.off_mm));
    const QString text = i == 0 ? WhatIfPicture::tr("the first alone, %1").arg(off)
                                : WhatIfPicture::tr("the second alone, %1").arg(off);
    viewer::Note way;
    way.line = alone.pulse_line;
    shown.notes.push_back(way);
    shown.notes.push_back(mark(Shape::small_disc, Role::pulse, alone.really.pulse, alone.really.forward, text,
                               order::start - static_cast<int>(i)));
  }
}

}  // namespace

StageContent what_if_content(const viewer::MistakeOutcome& outcome, const geometry::Case& the_case,
                             const geometry::Plan& plan) {
  const geometry::Placement &meant = outcome.meant, &really = outcome.result.really;
  const bool at_start = outcome.meant_on == CoilOn::start;
  StageContent content;
  viewer::Shown& shown = content.shown;
  shown.lines = lines_of(outcome.mistakes);
  shown.things = {Thing::skin, Thing::coil, Thing::labels};
  if (!shown.lines->empty()) shown.things.insert(Thing::tapes);
  if (at_start || outcome.result.vertex) {
    shown.things.insert(Thing::landmarks);
    shown.landmarks = std::set<std::string>{"Cz"};
  }
  if (shown.lines->contains("treatment")) shown.things.insert(Thing::hotspot);
  if (outcome.cap) {
    shown.things.insert(Thing::cap);
    shown.cap = outcome.cap;
  }
  if (outcome.result.sight) {
    shown.things.insert(Thing::sight);
    shown.sight = outcome.result.sight;
  }
  shown.coil_on = CoilOn::elsewhere;
  shown.placement = really;
  if (outcome.field) {
    shown.things.insert(Thing::field);
    shown.field = outcome.field;
  }

  const auto across = [](const geometry::Placement& p) { return p.front.cross(p.normal); };
  const auto& meant_mark = meant.edge_mark.by(the_case.coil.laid_by);
  const auto& real_mark = really.edge_mark.by(the_case.coil.laid_by);
  if (!outcome.edge_line.empty())
    content.shown.notes.push_back(line(outcome.edge_line, outcome.edge_mark_off_mm));
  if (!outcome.pulse_line.empty())
    content.shown.notes.push_back(line(outcome.pulse_line, outcome.result.off_mm));
  add_alone(outcome, content.shown);
  if (meant_mark && !outcome.edge_line.empty())
    content.shown.notes.push_back(mark(Shape::bar, Role::edge_mark_by_other_rule, *meant_mark, across(meant),
                                       WhatIfPicture::tr("wanted edge mark"), order::note));
  content.shown.notes.push_back(at_start ? mark(Shape::disc, Role::start, outcome.result.meant, meant.forward,
                                                WhatIfPicture::tr("wanted search start"), order::site)
                                         : mark(Shape::diamond, Role::treatment, outcome.result.meant,
                                                meant.forward, WhatIfPicture::tr("wanted pulse point"),
                                                order::site));
  if (const auto& vertex = outcome.result.vertex)
    content.shown.notes.push_back(mark(Shape::small_bar, Role::construction, *vertex, plan.axes.right,
                                       WhatIfPicture::tr("vertex as marked"), order::note));
  if (real_mark)
    content.shown.notes.push_back(mark(Shape::bar, Role::edge_mark, *real_mark, across(really),
                                       outcome.edge_line.empty()
                                           ? WhatIfPicture::tr("edge mark, in its place")
                                           : WhatIfPicture::tr("real edge mark"),
                                       order::edge_mark));
  content.shown.notes.push_back(mark(Shape::disc, Role::pulse, really.pulse, really.forward,
                                     outcome.pulse_line.empty() ? WhatIfPicture::tr("pulse point, as wanted")
                                     : outcome.alone.empty()    ? WhatIfPicture::tr("real pulse point")
                                                                : WhatIfPicture::tr("real pulse point, both"),
                                     order::hotspot));
  content.look.close_up = close_up(outcome, plan);
  return content;
}

}  // namespace scalpmark::window
