#pragma once

#include <QLabel>
#include <QPushButton>
#include <QWidget>
#include <vector>

#include "viewer/window/session/session.h"
#include "viewer/window/steps/save_step.h"
#include "viewer/words/find_again.h"

namespace scalpmark::window {

/// The lengths that find the marks again, one at a time in digits that are read from across the room while
/// both hands hold the tape. Lies over the window; Space, Page Down or a click go on, Page Up back, Esc ends.
class NextMark : public QWidget {
  Q_OBJECT
public:
  /// Shown when `step` asks for it.
  NextMark(QWidget* over, const Session& session, const SaveStep& step);

  void begin(std::vector<viewer::TapeToRead> tapes);
  [[nodiscard]] QLabel* number() const { return number_; }
  [[nodiscard]] QString what() const { return what_->text(); }
  [[nodiscard]] QPushButton* next() const { return next_; }

protected:
  void keyPressEvent(QKeyEvent* event) override;
  bool eventFilter(QObject* watched, QEvent* event) override;

private:
  void go_to(int index);

  std::vector<viewer::TapeToRead> tapes_;
  int at_ = 0;
  QLabel *what_, *number_, *progress_;
  QPushButton *previous_, *next_, *done_;
};

}  // namespace scalpmark::window
