#include "viewer/window/course/course_panel.h"

#include <QHBoxLayout>
#include <QVBoxLayout>
#include <algorithm>

#include "viewer/words/course_words.h"
#include "viewer/words/words.h"

namespace scalpmark::window {

CoursePanel::CoursePanel(QWidget* parent) : QWidget(parent) {
  setObjectName("coursePanel");
  setAttribute(Qt::WA_StyledBackground);
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(16, 8, 16, 10);
  row->setSpacing(16);
  distance_ = new CourseChart(CourseChart::Shows::distance);
  angle_ = new CourseChart(CourseChart::Shows::angle);
  said_ = new QLabel;
  said_->setWordWrap(true);
  said_->setAlignment(Qt::AlignTop | Qt::AlignLeft);
  said_->setTextInteractionFlags(Qt::TextSelectableByMouse);
  said_->setAccessibleName(tr("What the visits show"));
  row->addWidget(distance_, 3);
  row->addWidget(angle_, 3);
  row->addWidget(said_, 4);
}

void CoursePanel::show_course(const CourseCheck& check, const geometry::Visits& visits) {
  const auto& found = check.found();
  const geometry::Course course = found ? found->course : geometry::Course{};
  distance_->show_course(course);
  angle_->show_course(course);
  QStringList said;
  if (visits.empty())
    said << tr("This case has no visits yet. Pulses begin one, and so does Check, with today's marks.");
  else if (!check.problem().isEmpty())
    said << check.problem();
  else if (!found)
    said << tr("Finding the marks of all visits\u2026");
  if (!course.stretches.empty()) {
    const geometry::CourseStretch& last = course.stretches.back();
    if (last.first > 0)
      said << tr("Marked anew at visit %1; from there on the new marks are the reference.")
                  .arg(last.first + 1);
    for (const auto& sentence :
         {viewer::drift_sentence(last), viewer::angle_drift_sentence(last), viewer::limits_sentence(last)})
      if (!sentence.empty()) said << viewer::translated(sentence);
    said << tr("Training and illustration only.");
  }
  said_->setText(said.join(QStringLiteral("\n\n")));
}

StageContent course_content(const Session& session, const CourseCheck& check) {
  using viewer::Thing;
  StageContent content;
  content.shown.things = {Thing::skin, Thing::labels, Thing::treatment, Thing::course, Thing::legend};
  content.shown.course = check.shown();
  content.coil_follows_hand = false;
  // Near, so that visits can be told apart; without any marks there is only a head to see.
  const geometry::Visits& visits = session.case_file().the_case.visits;
  const bool any_marks =
      std::any_of(visits.begin(), visits.end(), [](const auto& v) { return count_of(v->site_tape) > 0; });
  if (any_marks) {
    constexpr double across_mm = 70;
    const geometry::Placement& site = session.plan().treatment;
    content.look.close_up = StageLook::CloseUp{{site.normal, site.forward}, site.pulse, across_mm};
  }
  return content;
}

}  // namespace scalpmark::window
