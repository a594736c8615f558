#pragma once

#include <optional>

#include "viewer/window/stage_view/loupe.h"
#include "viewer/window/stage_view/stage_subject.h"

namespace scalpmark::window {

/// Puts the loupe where it is of use on a bare skin: on the point that is dragged, else where the pointer is,
/// else on the point that is wanted next; away where there is nothing to see.
class LoupeGuide {
public:
  LoupeGuide(StageSubject& subject, vtkRenderWindow* window) : subject_(subject), loupe_(window) {}

  [[nodiscard]] const Loupe& loupe() const { return loupe_; }
  /// The point that keys set and move.
  void set_wanted(Fiducial which) { wanted_ = which; }
  [[nodiscard]] Fiducial wanted() const { return wanted_; }
  /// Over the skin; nothing: left it.
  void set_pointer(const std::optional<viewer::Pixel>& at) { pointer_ = at; }
  [[nodiscard]] bool has_pointer() const { return pointer_.has_value(); }

  /// The skin was put away.
  void leave();
  /// Puts the loupe in its place. A hand that drags a point, or the head, is said; a hovering one is not.
  void place(const std::optional<Fiducial>& dragged, bool hand_is_free);

private:
  StageSubject& subject_;
  Loupe loupe_;
  Fiducial wanted_ = Fiducial::nasion;
  std::optional<viewer::Pixel> pointer_;
};

}  // namespace scalpmark::window
