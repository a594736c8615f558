#pragma once

#include <QListWidget>
#include <QScrollArea>
#include <QStringList>

#include "viewer/window/teach/lesson_tools.h"
#include "viewer/window/teach/what_if_controls.h"

namespace scalpmark::window {

/// The lesson's steps, one of them current, and the controls that have one thing done wrong.
class LessonPanel : public QScrollArea {
  Q_OBJECT
public:
  explicit LessonPanel(QWidget* parent = nullptr);

  void set_steps(const QStringList& titles);
  void set_current(int step);
  [[nodiscard]] QListWidget* steps() const { return steps_; }
  [[nodiscard]] LessonTools* tools() const { return tools_; }
  [[nodiscard]] WhatIfControls* what_if() const { return what_if_; }

signals:
  /// Picked by hand: also the one that is current already.
  void step_wanted(int step);

protected:
  void resizeEvent(QResizeEvent* event) override;

private:
  /// Type and width grow with the window.
  void size_type();
  void fit_list();

  double scale_ = 0;
  QListWidget* steps_;
  LessonTools* tools_;
  WhatIfControls* what_if_;
};

}  // namespace scalpmark::window
