#include "viewer/window/frame/stage_column.h"

#include <QEvent>
#include <QVBoxLayout>

namespace scalpmark::window {

StageColumn::StageColumn(Session& session, UndoList& undo, QWidget* parent)
    : QWidget(parent),
      notice_(new NoticeBar),
      tapes_question_(new TapesQuestion(session, undo)),
      work_(new WorkBar),
      stage_(new StageView),
      verdict_(new VerdictPanel),
      course_(new CoursePanel),
      explain_(new ExplainPanel) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(0);
  column->addWidget(notice_);
  column->addWidget(tapes_question_);
  column->addWidget(stage_, 1);
  column->addWidget(verdict_);
  column->addWidget(course_);
  column->addWidget(explain_);
  work_->setParent(this);
  work_->hide();
  work_->installEventFilter(this);
  stage_->installEventFilter(this);
}

void StageColumn::place_work() {
  work_->setGeometry(0, stage_->y(), width(), work_->sizeHint().height());
  work_->raise();
}

void StageColumn::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  place_work();
}

bool StageColumn::eventFilter(QObject* watched, QEvent* event) {
  if ((watched == work_ && event->type() == QEvent::Show) ||
      (watched == stage_ && (event->type() == QEvent::Move || event->type() == QEvent::Resize)))
    place_work();
  return QWidget::eventFilter(watched, event);
}

}  // namespace scalpmark::window
