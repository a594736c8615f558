#pragma once

#include <QString>
#include <vector>

#include "viewer/stage/drawing/ink.h"
#include "viewer/stage/drawing/overlay.h"
#include "viewer/window/stage_view/stage_content.h"
#include "viewer/window/stage_view/stage_subject.h"

namespace scalpmark::window {

/// A note as it was drawn last.
struct DrawnNote {
  QString text;
  Eigen::Vector3d at = Eigen::Vector3d::Zero();
  viewer::Box box;  ///< of the text
};

/// Draws notes over the plan at the start of each frame: their texts clear of the plan's own labels and
/// captions and of each other, and off its chief marks where there is room.
class StageNotes {
public:
  explicit StageNotes(StageSubject& subject);
  ~StageNotes();
  StageNotes(const StageNotes&) = delete;
  StageNotes& operator=(const StageNotes&) = delete;

  void show(std::vector<StageNote> notes) { notes_ = std::move(notes); }
  /// Those in sight.
  [[nodiscard]] const std::vector<DrawnNote>& drawn() const { return drawn_; }

private:
  void draw();
  void draw(const StageNote& note, const geometry::Head& head);
  [[nodiscard]] viewer::Pixel place_for(const viewer::Pixel& at, const StageNote& note);
  /// Whether a text here would hide another or stand over the rim.
  [[nodiscard]] bool is_free(const viewer::Box& box) const;
  /// What must be seen: the pulse point above all.
  [[nodiscard]] std::vector<viewer::Box> chief_marks() const;

  StageSubject& subject_;
  viewer::Ink ink_;
  viewer::Overlay text_;
  unsigned long observer_ = 0;
  std::vector<StageNote> notes_;
  std::vector<DrawnNote> drawn_;
};

}  // namespace scalpmark::window
