#pragma once

#include <QObject>

#include "viewer/window/frame/menus.h"
#include "viewer/window/session/settings.h"
#include "viewer/window/stage_view/stage_view.h"
#include "viewer/window/steps/worksheet.h"

namespace scalpmark::window {

/// The size of letters that was chosen, or what suits the screen.
[[nodiscard]] TypeSize type_size_of(const Settings& settings);

/// How the window looks, as it was chosen and is remembered: theme, size of letters, movement. And, for the
/// moment only, whether it is projected.
class Looks : public QObject {
  Q_OBJECT
public:
  Looks(Settings& settings, Menus& menus, Worksheet& worksheet, StageView& stage);

  /// As it was remembered, or as suits the screen.
  void apply();
  [[nodiscard]] TypeSize type_size() const { return type_size_of(settings_); }
  [[nodiscard]] bool is_projected() const { return projected_; }
  /// The stage's letters: in a lesson and on a wall they are read from further away.
  void scale_stage(bool lesson, bool on_wall);

signals:
  void unit_chosen(LengthUnit unit);
  /// Letters have another size, or it is projected from now on, or no longer.
  void changed();

private:
  Settings& settings_;
  Worksheet& worksheet_;
  StageView& stage_;
  Menus& menus_;
  bool projected_ = false;
};

}  // namespace scalpmark::window
