#include "viewer/window/teach/lesson_bar.h"

#include <QAccessible>
#include <QGridLayout>
#include <QHideEvent>
#include <QShowEvent>
#include <QVBoxLayout>
#include <algorithm>

namespace scalpmark::window {

namespace {

/// The caption's letters grow with the window, from this share of its height on.
constexpr double type_share = 1.0 / 33;
constexpr int smallest_type_px = 20, largest_type_px = 44;
constexpr int least_caption_px = 15;
constexpr int rim_px = 20;

}  // namespace

LessonBar::LessonBar(QWidget* parent) : QWidget(parent) {
  setObjectName("lessonBar");
  setAttribute(Qt::WA_StyledBackground);
  progress_ = new QLabel;
  progress_->setObjectName("lessonProgress");
  title_ = new QLabel;
  title_->setObjectName("lessonTitle");
  caption_ = new QLabel;
  caption_->setObjectName("lessonCaption");
  caption_->setWordWrap(true);
  caption_->setAlignment(Qt::AlignTop | Qt::AlignLeft);
  caption_->setTextInteractionFlags(Qt::TextSelectableByMouse);
  const auto button = [](const QString& text, const QString& name, const QString& tooltip) {
    auto* made = new QPushButton(text);
    made->setObjectName("lessonButton");
    made->setAccessibleName(name);
    made->setToolTip(tooltip);
    return made;
  };
  previous_ = button(tr("Previous"), tr("Previous step"), tr("Previous step (Page Up)"));
  play_ = button(tr("Play"), tr("Play the lesson"), tr("Play or pause (Space)"));
  next_ = button(tr("Next"), tr("Next step"), tr("Next step (Page Down)"));

  head_ = new QGridLayout;
  head_->setHorizontalSpacing(10);
  head_->setVerticalSpacing(4);
  head_->addWidget(progress_, 1, 0, Qt::AlignBaseline);
  head_->addWidget(title_, 1, 1, Qt::AlignBaseline);
  head_->addWidget(previous_, 1, 2);
  head_->addWidget(play_, 1, 3);
  head_->addWidget(next_, 1, 4);
  head_->setColumnStretch(1, 1);
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(rim_px, 8, rim_px, 12);
  all->setSpacing(6);
  all->addLayout(head_);
  all->addWidget(caption_);
  play_->setText(tr("Play"));
}

void LessonBar::make_room_for(const QStringList& captions, const QStringList& titles) {
  captions_ = captions;
  titles_ = titles;
  size_type();
}

void LessonBar::size_type() {
  const int px =
      std::clamp(static_cast<int>(type_share * window()->height()), smallest_type_px, largest_type_px);
  const int width = this->width() - 2 * rim_px;
  const auto height_at = [&](int text_px, const QString& text) {
    QFont font = caption_->font();
    font.setPixelSize(text_px);
    return QFontMetrics(font).boundingRect(QRect(0, 0, width, 10000), Qt::TextWordWrap, text).height();
  };
  int height = height_at(px, QStringLiteral("1\n2"));
  for (const QString& caption : captions_) height = std::max(height, height_at(px, caption));
  // What a mistake makes of the lesson may be longer than any step: it is set smaller before it takes of the
  // stage.
  int caption_px = px;
  while (caption_px > least_caption_px && height_at(caption_px, caption_->text()) > height) --caption_px;
  height = std::max(height, height_at(caption_px, caption_->text()));
  const QString size = QStringLiteral("font-size: %1px;");
  if (px != type_px_) {
    type_px_ = px;
    title_->setStyleSheet(size.arg(px) + QStringLiteral("font-weight: 700;"));
    progress_->setStyleSheet(size.arg(px * 3 / 4));
  }
  if (caption_px != caption_px_) {
    caption_px_ = caption_px;
    caption_->setStyleSheet(size.arg(caption_px));
  }
  caption_->setMinimumHeight(height);
  place_title();
}

void LessonBar::size_buttons() {
  constexpr int padding_px = 18, frame_px = 2, to_spare_px = 24;
  play_->ensurePolished();
  // Room for the longest word, so that the buttons stay where they are.
  int widest = 0;
  for (const QString& text : {tr("Play"), tr("Pause"), tr("Play again")})
    widest = std::max(widest, play_->fontMetrics().horizontalAdvance(text));
  play_->setMinimumWidth(widest + 2 * (padding_px + frame_px) + to_spare_px);
}

void LessonBar::place_title() {
  size_buttons();
  QFont font = title_->font();
  font.setPixelSize(type_px_);
  font.setBold(true);
  const QFontMetrics metrics(font);
  int widest = metrics.horizontalAdvance(title_->text());
  for (const QString& title : titles_) widest = std::max(widest, metrics.horizontalAdvance(title));
  int others = 2 * rim_px + 4 * head_->horizontalSpacing() + progress_->sizeHint().width();
  for (const QPushButton* button : {previous_, play_, next_})
    others += std::max(button->sizeHint().width(), button->minimumWidth());
  progress_->setVisible(others <= width());  // the list beside the stage has the step as well
  const bool alone = widest + others > width();
  if (alone == title_alone_) return;
  title_alone_ = alone;
  head_->removeWidget(title_);
  if (alone)
    head_->addWidget(title_, 0, 0, 1, 5);
  else
    head_->addWidget(title_, 1, 1, Qt::AlignBaseline);
}

void LessonBar::show_text(const QString& progress, const QString& title, const QString& caption) {
  progress_->setText(progress);
  title_->setText(title);
  if (caption == caption_->text()) return place_title();
  caption_->setText(caption);
  size_type();
  // Read out without being asked for.
  QAccessibleEvent said(caption_, QAccessible::Alert);
  QAccessible::updateAccessibility(&said);
}

void LessonBar::show_player(bool playing, bool starts_anew, bool at_start, bool at_end) {
  play_->setText(playing ? tr("Pause") : starts_anew ? tr("Play again") : tr("Play"));
  play_->setAccessibleName(playing ? tr("Pause the lesson") : tr("Play the lesson"));
  // A button that goes grey under the finger would pass its focus on to another.
  for (const auto& [button, off] : {std::pair(previous_, at_start), std::pair(next_, at_end)}) {
    if (off && button->hasFocus()) play_->setFocus();
    button->setEnabled(!off);
  }
}

void LessonBar::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  size_type();
}

void LessonBar::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  size_type();
  if (!event->spontaneous()) emit shown();
}

void LessonBar::hideEvent(QHideEvent* event) {
  QWidget::hideEvent(event);
  emit hidden();
}

}  // namespace scalpmark::window
