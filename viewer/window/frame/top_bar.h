#pragma once

#include <QButtonGroup>
#include <QPushButton>
#include <QWidget>

#include "viewer/window/frame/mode.h"

namespace scalpmark::window {

/// The row over everything: a button for each mode, and for what is taken away as a file.
class TopBar : public QWidget {
  Q_OBJECT
public:
  explicit TopBar(QWidget* parent = nullptr);
  void show_mode(Mode mode) { button(mode)->setChecked(true); }
  [[nodiscard]] QPushButton* button(Mode mode) const;

protected:
  void resizeEvent(QResizeEvent* event) override;
  bool event(QEvent* event) override;

signals:
  void mode_wanted(Mode mode);
  void picture_wanted();
  void sheet_wanted();

private:
  /// Less beside the words where there is no room for what is usual.
  void fit();

  QButtonGroup* modes_;
  bool tight_ = false;
};

}  // namespace scalpmark::window
