#pragma once

#include <QLabel>
#include <QWidget>

#include "viewer/window/course/course_chart.h"
#include "viewer/window/jobs/course_check.h"
#include "viewer/window/session/session.h"
#include "viewer/window/stage_view/stage_content.h"

namespace scalpmark::window {

/// What a course of visits shows: distance and angle by visit with their limits, and in words whether it
/// drifts.
class CoursePanel : public QWidget {
  Q_OBJECT
public:
  explicit CoursePanel(QWidget* parent = nullptr);
  void show_course(const CourseCheck& check, const geometry::Visits& visits);
  [[nodiscard]] QString text() const { return said_->text(); }

private:
  CourseChart *distance_, *angle_;
  QLabel* said_;
};

/// What Course mode puts on the stage: the site, and where each visit's marks put the pulse.
[[nodiscard]] StageContent course_content(const Session& session, const CourseCheck& check);

}  // namespace scalpmark::window
