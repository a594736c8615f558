#include "viewer/window/frame/next_mark.h"

#include <QAccessible>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QVBoxLayout>

#include "viewer/words/numbers.h"

namespace scalpmark::window {

NextMark::NextMark(QWidget* over, const Session& session, const SaveStep& step) : QWidget(over) {
  setObjectName("startPage");
  setAttribute(Qt::WA_StyledBackground);
  setFocusPolicy(Qt::StrongFocus);
  setAccessibleName(tr("The numbers of the marks, one at a time"));
  over->installEventFilter(this);
  what_ = new QLabel;
  what_->setObjectName("huge");
  what_->setWordWrap(true);
  number_ = new QLabel;
  number_->setObjectName("acrossTheRoom");
  progress_ = new QLabel;
  progress_->setObjectName("larger");
  for (QLabel* each : {what_, number_, progress_}) each->setAlignment(Qt::AlignCenter);
  previous_ = new QPushButton(tr("Previous"));
  next_ = new QPushButton(tr("Next"));
  done_ = new QPushButton(tr("Done"));
  auto* row = new QHBoxLayout;
  row->addStretch(1);
  for (QPushButton* each : {previous_, next_, done_}) {
    each->setObjectName("lessonButton");
    row->addWidget(each);
  }
  row->addStretch(1);
  auto* all = new QVBoxLayout(this);
  all->addStretch(1);
  all->addWidget(what_);
  all->addWidget(number_);
  all->addStretch(1);
  all->addWidget(progress_);
  all->addLayout(row);
  hide();
  connect(&step, &SaveStep::numbers_wanted, this, [this, &session] {
    if (session.is_ready()) begin(viewer::find_again(session.plan()));
  });
  connect(previous_, &QPushButton::clicked, this, [this] { go_to(at_ - 1); });
  connect(next_, &QPushButton::clicked, this, [this] { go_to(at_ + 1); });
  connect(done_, &QPushButton::clicked, this, &QWidget::hide);
}

void NextMark::begin(std::vector<viewer::TapeToRead> tapes) {
  if (tapes.empty()) return;
  tapes_ = std::move(tapes);
  setGeometry(parentWidget()->rect());
  raise();
  show();
  go_to(0);
  next_->setFocus();
}

void NextMark::go_to(int index) {
  if (index < 0 || index >= static_cast<int>(tapes_.size())) return;
  at_ = index;
  const viewer::TapeToRead& tape = tapes_[static_cast<std::size_t>(at_)];
  what_->setText(tr("%1, from %2", "a mark, and where the tape begins")
                     .arg(QString::fromStdString(tape.mark), QString::fromStdString(tape.from)));
  number_->setText(QString::fromStdString(viewer::tape_length(tape.mm)));
  progress_->setText(tr("%1 of %2").arg(at_ + 1).arg(tapes_.size()));
  previous_->setEnabled(at_ > 0);
  next_->setEnabled(at_ + 1 < static_cast<int>(tapes_.size()));
  if (!next_->isEnabled() && next_->hasFocus()) done_->setFocus();
  QAccessibleEvent said(number_, QAccessible::Alert);  // read out without being asked for
  QAccessible::updateAccessibility(&said);
}

void NextMark::keyPressEvent(QKeyEvent* event) {
  switch (event->key()) {
    case Qt::Key_Escape:
      hide();
      break;
    case Qt::Key_Space:
    case Qt::Key_PageDown:
    case Qt::Key_Right:
      go_to(at_ + 1);
      break;
    case Qt::Key_PageUp:
    case Qt::Key_Left:
      go_to(at_ - 1);
      break;
    default:
      QWidget::keyPressEvent(event);
  }
}

bool NextMark::eventFilter(QObject* watched, QEvent* event) {
  if (watched == parentWidget() && event->type() == QEvent::Resize) setGeometry(parentWidget()->rect());
  return QWidget::eventFilter(watched, event);
}

}  // namespace scalpmark::window
