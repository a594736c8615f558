#pragma once

#include <QLineEdit>

namespace scalpmark::window {

/// A line to type into. While nothing typed is waiting in it, undo and redo are the window's: they take back
/// the last thing that was done, not letters of a finished entry.
class TextEntry : public QLineEdit {
  Q_OBJECT
public:
  using QLineEdit::QLineEdit;

protected:
  bool event(QEvent* event) override;
};

}  // namespace scalpmark::window
