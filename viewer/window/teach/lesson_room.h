#pragma once

#include <QWidget>

#include "viewer/window/session/session.h"

namespace scalpmark::window {

/// What a lesson asks of the window it is given in.
class LessonRoom {
public:
  [[nodiscard]] virtual const Session& session() const = 0;
  /// Whether the lesson is what the window shows now.
  [[nodiscard]] virtual bool lesson_is_on() const = 0;
  /// Whether things may move by themselves.
  [[nodiscard]] virtual bool is_animated() const = 0;
  /// What pictures beside the stage's own lie over.
  [[nodiscard]] virtual QWidget& over_stage() = 0;
  /// Which part of the stage such a picture covers: nothing is written there.
  virtual void cover_stage(const QRect& part) = 0;
  /// Lays the case on the other side; an edit like any other.
  virtual void switch_side() = 0;
  /// Brings the stage up to date with the lesson.
  virtual void refresh_stage() = 0;
  /// Turns the stage to what the lesson is about.
  virtual void look() = 0;
  /// Both, drawn once.
  virtual void refresh_and_look() = 0;

protected:
  ~LessonRoom() = default;
};

}  // namespace scalpmark::window
