#pragma once

#include <QGridLayout>
#include <QLabel>
#include <QPushButton>
#include <QStringList>
#include <QWidget>

namespace scalpmark::window {

/// What is said at a step, in type for a class room, and the buttons that play the lesson.
class LessonBar : public QWidget {
  Q_OBJECT
public:
  explicit LessonBar(QWidget* parent = nullptr);

  /// Keeps room for the longest of these, so that the stage over it keeps its size from step to step.
  void make_room_for(const QStringList& captions, const QStringList& titles);
  void show_text(const QString& progress, const QString& title, const QString& caption);
  void show_player(bool playing, bool starts_anew, bool at_start, bool at_end);

  [[nodiscard]] QString progress() const { return progress_->text(); }
  [[nodiscard]] QString title() const { return title_->text(); }
  [[nodiscard]] QString caption() const { return caption_->text(); }
  [[nodiscard]] QLabel* title_label() const { return title_; }
  [[nodiscard]] QLabel* caption_label() const { return caption_; }
  [[nodiscard]] QPushButton* play() const { return play_; }
  [[nodiscard]] QPushButton* previous() const { return previous_; }
  [[nodiscard]] QPushButton* next() const { return next_; }

signals:
  /// Came into sight, or went out of it.
  void shown();
  void hidden();

protected:
  void resizeEvent(QResizeEvent* event) override;
  void showEvent(QShowEvent* event) override;
  void hideEvent(QHideEvent* event) override;

private:
  void size_type();
  void size_buttons();
  /// Beside the buttons, or over them where it would be cut.
  void place_title();

  QLabel *progress_, *title_, *caption_;
  QPushButton *previous_, *play_, *next_;
  QStringList captions_, titles_;
  QGridLayout* head_;
  int type_px_ = 0, caption_px_ = 0;
  bool title_alone_ = false;
};

}  // namespace scalpmark::window
