#include "viewer/window/stage_view/stage_notes.h"

#include <vtkCommand.h>

#include <algorithm>
#include <cmath>

#include "viewer/stage/drawing/aim.h"

namespace scalpmark::window {

using viewer::Box;
using viewer::Pixel;

namespace {

constexpr double line_px = 3, line_lift_mm = 10;  // over the marks it joins
constexpr double line_clear_px = 5;               // of a text from its line
const viewer::TextStyle style{15, true, viewer::palette::text, true};

}  // namespace

StageNotes::StageNotes(StageSubject& subject)
    : subject_(subject), ink_(subject.plan_renderer()), text_(subject.plan_renderer()) {
  observer_ = subject.plan_renderer()->AddObserver(vtkCommand::StartEvent, this,
                                                   static_cast<void (StageNotes::*)()>(&StageNotes::draw));
}

StageNotes::~StageNotes() {
  subject_.plan_renderer()->RemoveObserver(observer_);
}

// As on a tape: a tick every half centimetre, a longer one at every whole.
void StageNotes::draw_ticks(const StageNote& note, const geometry::Head& head) {
  constexpr double every_mm = 5, short_px = 4, long_px = 7, tick_px = 1.6;
  const viewer::Sight& s = subject_.stage().sight();
  double next_mm = 0, before_mm = 0;
  for (std::size_t i = 1; i < note.line.size(); ++i) {
    const Eigen::Vector3d way = note.line[i] - note.line[i - 1];
    const double length = way.norm();
    for (; length > 0 && next_mm <= before_mm + length; next_mm += every_mm) {
      const Eigen::Vector3d at = note.line[i - 1] + (next_mm - before_mm) / length * way;
      const Eigen::Vector3d across = viewer::calm_normal(head.skin(), at).cross(way).normalized();
      const bool whole = std::lround(next_mm / every_mm) % 2 == 0;
      const Eigen::Vector3d half = s.mm(whole ? long_px : short_px) * across;
      ink_.line({at - half, at + half}, tick_px, note.colour, line_lift_mm);
    }
    before_mm += length;
  }
}

void StageNotes::draw(const StageNote& note, const geometry::Head& head,
                      std::vector<viewer::MarkInPicture>& marks, std::vector<viewer::LabelWish>& wishes) {
  const viewer::Sight& s = subject_.stage().sight();
  const Eigen::Vector3d& place = note.line.empty() ? note.at : note.line[note.line.size() / 2];
  const viewer::Mark mark = viewer::make_mark(viewer::Thing::labels, {}, note.shape, {}, place,
                                              viewer::calm_normal(head.skin(), place), note.along);
  if (!note.line.empty()) ink_.line(note.line, line_px, note.colour, line_lift_mm);
  if (note.ticked) draw_ticks(note, head);
  if (!viewer::in_sight(head.skin(), mark.at, mark.normal, s)) return;
  const Pixel anchor = s.project(mark.at);
  double clear = line_clear_px * s.scale;
  if (note.line.empty()) {
    ink_.mark(mark, note.colour);
    clear = viewer::reach_px(note.shape) * s.scale;
    marks.push_back({{anchor.x - clear, anchor.y - clear, anchor.x + clear, anchor.y + clear}, true});
  }
  if (note.text.isEmpty()) return;
  viewer::LabelWish wish;
  wish.text = note.text.toStdString();
  wish.anchor = anchor;
  wish.clear_px = clear + s.scale;
  wish.priority = note.line.empty() ? 2 : 1;
  wish.may_go_far = true;
  const viewer::TextSize size = text_.measure(wish.text, style);
  wish.width = size.width;
  wish.height = size.height;
  wishes.push_back(std::move(wish));
  drawn_.push_back({note.text, mark.at, {}, anchor, note.line.empty(), false});
}

void StageNotes::draw_texts(std::vector<viewer::LabelWish> wishes,
                            const std::vector<viewer::MarkInPicture>& marks) {
  const viewer::Stage& stage = subject_.stage();
  const viewer::Sight& s = stage.sight();
  std::vector<Box> taken;
  for (const auto& caption : stage.captions()) taken.push_back(caption.box);
  for (const auto& label : stage.labels()) taken.push_back(label.box);
  const Box canvas{0, 0, static_cast<double>(s.width_px), static_cast<double>(s.height_px)};
  const auto placed = viewer::place_labels(wishes, canvas, taken, marks, {}, s.scale);
  for (std::size_t i = 0; i < wishes.size(); ++i) {
    const viewer::LabelWish& wish = wishes[i];
    const auto found = std::find_if(placed.begin(), placed.end(), [&](const viewer::PlacedLabel& label) {
      return label.wish.text == wish.text && label.wish.anchor.x == wish.anchor.x &&
             label.wish.anchor.y == wish.anchor.y;
    });
    // Said even where there is no room: at its place, over what is there.
    const Box box = found != placed.end() ? found->box
                                          : Box{wish.anchor.x + wish.clear_px, wish.anchor.y + wish.clear_px,
                                                wish.anchor.x + wish.clear_px + wish.width,
                                                wish.anchor.y + wish.clear_px + wish.height};
    if (found != placed.end() && found->leader)
      text_.line(
          wish.anchor,
          {std::clamp(wish.anchor.x, box.left, box.right), std::clamp(wish.anchor.y, box.top, box.bottom)},
          1.1, viewer::palette::quiet_text);
    text_.text(wish.text, {box.left, box.top}, style);
    drawn_[i].box = box;
    drawn_[i].leader = found != placed.end() && found->leader;
  }
}

void StageNotes::draw() {
  viewer::Stage& stage = subject_.stage();
  // Sizes of text are in pixels of the screen already; the widget would scale them again on a dense one.
  subject_.plan_renderer()->GetRenderWindow()->SetDPI(72);
  drawn_.clear();
  if (subject_.plan()) stage.refresh();
  ink_.begin(stage.sight());
  text_.begin(stage.sight());
  if (subject_.plan()) {
    std::vector<viewer::MarkInPicture> marks = stage.marks_in_picture();
    std::vector<viewer::LabelWish> wishes;
    for (const StageNote& note : notes_) draw(note, subject_.plan()->head, marks, wishes);
    draw_texts(std::move(wishes), marks);
  }
  ink_.done();
  text_.done();
}

}  // namespace scalpmark::window
