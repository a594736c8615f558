#include "viewer/window/frame/stage_column.h"

#include <QVBoxLayout>

namespace scalpmark::window {

StageColumn::StageColumn(Session& session, UndoList& undo, QWidget* parent)
    : QWidget(parent),
      notice_(new NoticeBar),
      tapes_question_(new TapesQuestion(session, undo)),
      work_(new WorkBar),
      stage_(new StageView),
      verdict_(new VerdictPanel),
      explain_(new ExplainPanel) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(0);
  column->addWidget(notice_);
  column->addWidget(tapes_question_);
  column->addWidget(work_);
  column->addWidget(stage_, 1);
  column->addWidget(verdict_);
  column->addWidget(explain_);
}

}  // namespace scalpmark::window
