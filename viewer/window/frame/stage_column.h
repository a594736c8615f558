#pragma once

#include <QWidget>

#include "viewer/window/check/verdict_panel.h"
#include "viewer/window/course/course_panel.h"
#include "viewer/window/explain/explain_panel.h"
#include "viewer/window/frame/bars.h"
#include "viewer/window/frame/tapes_question.h"
#include "viewer/window/stage_view/stage_view.h"

namespace scalpmark::window {

/// The stage with what stands over it (sentences, a question, work under way) and under it (a verdict, a
/// course, words for a patient).
class StageColumn : public QWidget {
  Q_OBJECT
public:
  StageColumn(Session& session, UndoList& undo, QWidget* parent = nullptr);

  [[nodiscard]] NoticeBar* notice() const { return notice_; }
  [[nodiscard]] TapesQuestion* tapes_question() const { return tapes_question_; }
  [[nodiscard]] WorkBar* work() const { return work_; }
  [[nodiscard]] StageView* stage() const { return stage_; }
  [[nodiscard]] VerdictPanel* verdict() const { return verdict_; }
  [[nodiscard]] CoursePanel* course() const { return course_; }
  [[nodiscard]] ExplainPanel* explain() const { return explain_; }

protected:
  void resizeEvent(QResizeEvent* event) override;
  bool eventFilter(QObject* watched, QEvent* event) override;

private:
  /// Over the stage's upper rim: what comes and goes by itself does not push the stage about.
  void place_work();

  NoticeBar* notice_;
  TapesQuestion* tapes_question_;
  WorkBar* work_;
  StageView* stage_;
  VerdictPanel* verdict_;
  CoursePanel* course_;
  ExplainPanel* explain_;
};

}  // namespace scalpmark::window
