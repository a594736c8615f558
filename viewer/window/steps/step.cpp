#include "viewer/window/steps/step.h"

#include <QStyle>
#include <QVariant>
#include <utility>

namespace scalpmark::window {

Step::Step(int number, const QString& title, QWidget* parent)
    : QFrame(parent), title_(title), number_(number) {
  setObjectName("step");
  heading_ = new QPushButton;
  heading_->setObjectName("heading");
  heading_->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
  heading_->setCursor(Qt::PointingHandCursor);
  heading_->setFocusPolicy(Qt::StrongFocus);
  heading_->setMinimumWidth(100);  // what does not fit is left out, instead of making all steps wider

  const auto text = [](const char* name) {
    auto* label = new QLabel;
    label->setObjectName(name);
    label->setWordWrap(true);
    label->setTextFormat(Qt::PlainText);  // it may repeat what stands in a file
    label->hide();
    return label;
  };
  hint_ = text("hint");
  note_ = text("note");
  problem_ = text("problem");
  fields_ = new QVBoxLayout;
  fields_->setSpacing(8);

  body_ = new QWidget;
  auto* inside = new QVBoxLayout(body_);
  inside->setContentsMargins(14, 2, 14, 12);
  inside->setSpacing(8);
  inside->addWidget(hint_);
  inside->addLayout(fields_);
  inside->addWidget(note_);
  inside->addWidget(problem_);
  body_->hide();

  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(0, 0, 0, 0);
  all->setSpacing(0);
  all->addWidget(heading_);
  all->addWidget(body_);
  label_heading();

  connect(heading_, &QPushButton::clicked, this, [this] {
    set_open(!open_);
    if (open_) emit entered();
  });
}

void Step::set_open(bool open) {
  open_ = open;
  body_->setVisible(open);
  label_heading();
}

void Step::set_hint(const QString& hint) {
  hint_->setText(hint);
  hint_->setVisible(!hint.isEmpty());
}

void Step::set_summary(const QString& summary) {
  summary_ = summary;
  label_heading();
}

void Step::set_problem(const QString& sentence) {
  const bool anew = !sentence.isEmpty() && sentence != problem_->text();
  problem_->setText(sentence);
  problem_->setVisible(!sentence.isEmpty());
  if (anew && open_) emit said_problem(problem_);
}

void Step::set_note(const QString& sentence) {
  note_->setText(sentence);
  note_->setVisible(!sentence.isEmpty());
}

void Step::set_current(bool current) {
  setProperty("current", current);
  style()->unpolish(this);
  style()->polish(this);
  style()->unpolish(heading_);
  style()->polish(heading_);
}

void Step::label_heading() {
  const QString name = QStringLiteral("%1  %2").arg(number_).arg(title_);
  const QString whole = open_ || summary_.isEmpty() ? name : name + QStringLiteral("    ") + summary_;
  heading_->setText(whole);
  const int too_wide = heading_->sizeHint().width() - heading_->width();
  heading_->setToolTip(too_wide > 0 ? summary_ : QString());
  if (too_wide > 0) {
    const QFontMetrics letters = heading_->fontMetrics();
    heading_->setText(letters.elidedText(whole, Qt::ElideRight, letters.horizontalAdvance(whole) - too_wide));
  }
  heading_->setAccessibleName(
      tr("Step %1, %2, %3").arg(number_).arg(title_, open_ ? tr("open") : tr("closed")));
  heading_->setAccessibleDescription(summary_);
}

void Step::resizeEvent(QResizeEvent* event) {
  QFrame::resizeEvent(event);
  label_heading();
}

void Step::focusInEvent(QFocusEvent* event) {
  QFrame::focusInEvent(event);
  emit entered();
}

StageContent Step::content_with(std::set<viewer::Thing> things, const HeldCoil& coil) {
  things.insert({viewer::Thing::skin, viewer::Thing::labels});
  StageContent content;
  content.shown = shown_with(std::move(things), coil);
  content.for_work = true;
  return content;
}

}  // namespace scalpmark::window
