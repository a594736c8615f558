#pragma once

#include <vtkRenderer.h>

#include <memory>
#include <vector>

#include "viewer/stage/drawing/body_drawing.h"
#include "viewer/stage/drawing/coil_drawing.h"
#include "viewer/stage/drawing/gap_drawing.h"
#include "viewer/stage/drawing/ink.h"
#include "viewer/stage/drawing/label.h"
#include "viewer/stage/drawing/seen_through_drawing.h"
#include "viewer/stage/scene/scene.h"

namespace scalpmark::viewer {

/// One part of a scene as VTK draws it. Bodies go to the renderer when they change; lines, spots and marks
/// are drawn anew for each view, since their sizes are in pixels and the head hides others.
class PartDrawing {
public:
  explicit PartDrawing(vtkRenderer* renderer);

  /// Says whether it has a body that it had not before, which those of later parts have to follow.
  bool show(const Part& part);
  /// Puts its bodies and its ink behind all others in the order of drawing.
  void draw_last();
  void draw(const Part& part, const geometry::Surface& skin, const Sight& sight);

  // As drawn last.
  [[nodiscard]] const std::vector<SeenMark>& marks() const { return marks_; }
  [[nodiscard]] const std::vector<LabelWish>& wishes() const { return wishes_; }
  /// Symbols that are no marks.
  [[nodiscard]] const std::vector<SymbolInPicture>& symbols() const { return symbols_; }
  /// Pieces of lines beside which labels would rather stand.
  [[nodiscard]] const std::vector<Box>& lines() const { return lines_; }
  /// What is said of marks that the head hides (Label::aside).
  [[nodiscard]] const std::vector<std::string>& unseen() const { return unseen_; }
  /// Whether that is what it is drawn with.
  [[nodiscard]] bool has(const vtkActor* actor) const;
  /// Null for a part without.
  [[nodiscard]] BodyDrawing* body() const { return body_.get(); }

private:
  void draw_line(const Line& line, const geometry::Surface& skin, const Sight& sight);
  void draw_spot(const Spot& spot, const geometry::Surface& skin, const Sight& sight);
  void wish(const std::optional<Label>& label, const Eigen::Vector3d& at, const Sight& sight);
  void leave_free(const Eigen::Vector3d& at, const Box& reach_px, const Sight& sight);
  void leave_line_free(const Line& line, const Sight& sight);

  vtkRenderer* renderer_;
  Ink ink_;
  std::unique_ptr<BodyDrawing> body_;
  std::unique_ptr<CoilDrawing> coil_;
  std::unique_ptr<GapDrawing> gaps_;
  std::unique_ptr<SeenThroughDrawing> through_;
  std::vector<SeenMark> marks_;
  std::vector<LabelWish> wishes_;
  std::vector<SymbolInPicture> symbols_;
  std::vector<Box> lines_;
  std::vector<std::string> unseen_;
};

}  // namespace scalpmark::viewer
