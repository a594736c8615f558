#pragma once

#include <QString>
#include <vector>

#include "viewer/stage/drawing/ink.h"
#include "viewer/stage/drawing/label.h"
#include "viewer/stage/drawing/overlay.h"
#include "viewer/window/stage_view/stage_content.h"
#include "viewer/window/stage_view/stage_subject.h"

namespace scalpmark::window {

/// A note as it was drawn last.
struct DrawnNote {
  QString text;
  Eigen::Vector3d at = Eigen::Vector3d::Zero();
  viewer::Box box;       ///< of the text
  viewer::Pixel anchor;  ///< of what it names
  bool symbol = false;   ///< a mark, no line
  bool leader = false;   ///< a line leads from the text to it
};

/// Draws notes over the plan at the start of each frame: their texts clear of the plan's own labels and
/// captions and of each other, off its marks, and nearer to what they name than to anything else (as
/// viewer::place_labels sees to).
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
  /// Line, ticks or shape; what it takes up of the picture is added to `marks`, its text to `wishes`.
  void draw(const StageNote& note, const geometry::Head& head, std::vector<viewer::MarkInPicture>& marks,
            std::vector<viewer::LabelWish>& wishes);
  void draw_ticks(const StageNote& note, const geometry::Head& head);
  void draw_texts(std::vector<viewer::LabelWish> wishes, const std::vector<viewer::MarkInPicture>& marks);

  StageSubject& subject_;
  viewer::Ink ink_;
  viewer::Overlay text_;
  unsigned long observer_ = 0;
  std::vector<StageNote> notes_;
  std::vector<DrawnNote> drawn_;
};

}  // namespace scalpmark::window
