#include "viewer/window/frame/foot.h"

#include <QHBoxLayout>
#include <QStringList>

#include "viewer/words/in_hand_words.h"

namespace scalpmark::window {

Foot::Foot(QWidget* parent) : QWidget(parent) {
  setObjectName("foot");
  setAttribute(Qt::WA_StyledBackground);
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(12, 5, 12, 5);
  row->setSpacing(12);
  in_hand_ = new QLabel(QString::fromStdString(viewer::in_hand_headline()));
  in_hand_->setObjectName("provisional");
  back_ = new QPushButton;
  back_->setObjectName("main");
  back_->setToolTip(tr("The plan is as it was; only the coil goes back (Esc)"));
  back_->setAccessibleDescription(back_->toolTip());
  status_ = new QLabel;
  status_->setObjectName("status");
  status_->setAccessibleName(tr("Where the coil is"));
  status_->setTextInteractionFlags(Qt::TextSelectableByMouse);
  status_->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
  row->addWidget(in_hand_);
  row->addWidget(status_, 1);
  row->addWidget(back_);
  connect(back_, &QPushButton::clicked, this, &Foot::back_wanted);
  // The stage keeps its height, whether the button is there or not: it appears under the hand that drags. Its
  // width is the line's until then.
  QSizePolicy keeps = back_->sizePolicy();
  keeps.setRetainSizeWhenHidden(true);
  back_->setSizePolicy(keeps);
  show_hand(false, false);
}

void Foot::say(const QString& line) {
  line_ = line;
  status_->setToolTip(line);  // where the line is longer than the window is wide
  fit();
}

void Foot::fit() {
  static const QString between = QStringLiteral("  |  "), more = QStringLiteral("\u2026");
  QStringList parts = line_.split(between);
  QString said = line_;
  while (parts.size() > 1 &&
         status_->fontMetrics().horizontalAdvance(said) > status_->contentsRect().width()) {
    parts.removeLast();
    said = parts.join(between) + between + more;
  }
  status_->setText(said);
}

void Foot::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  layout()->activate();
  fit();
}

void Foot::show_hand(bool in_hand, bool to_start) {
  in_hand_->setVisible(in_hand);
  back_->setText(to_start ? tr("Back to the start") : tr("Back to the site"));
  back_->setMaximumWidth(in_hand ? QWIDGETSIZE_MAX : 0);
  back_->setVisible(in_hand);
  layout()->activate();
  fit();
}

}  // namespace scalpmark::window
