#pragma once

#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QTimer>
#include <QWidget>

namespace scalpmark::window {

/// One sentence over the stage about something that went wrong or is done, until it is closed or said anew.
class NoticeBar : public QWidget {
  Q_OBJECT
public:
  enum class Kind { problem, done };
  explicit NoticeBar(QWidget* parent = nullptr);
  /// An empty sentence takes the bar away.
  void say(const QString& sentence, Kind kind = Kind::problem);
  [[nodiscard]] QString text() const { return isHidden() ? QString() : text_->text(); }

private:
  QLabel* text_;
};

/// How far long work is, and the button that gives it up. Appears when work takes longer than a blink.
class WorkBar : public QWidget {
  Q_OBJECT
public:
  explicit WorkBar(QWidget* parent = nullptr);
  void show_work(const QString& what, double fraction);
  void rest();
  [[nodiscard]] QPushButton* cancel() const { return cancel_; }

signals:
  void cancelled();

private:
  QLabel* text_;
  QProgressBar* progress_;
  QPushButton* cancel_;
  QTimer appear_;
};

}  // namespace scalpmark::window
