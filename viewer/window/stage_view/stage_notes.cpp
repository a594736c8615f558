#include "viewer/window/stage_view/stage_notes.h"

#include <vtkCommand.h>

#include <algorithm>
#include <cmath>

#include "viewer/stage/drawing/aim.h"

namespace scalpmark::window {

using viewer::Box;
using viewer::Pixel;

namespace {

constexpr double leader_px = 30;                  // text further off than that has a line to its mark
constexpr double line_px = 3, line_lift_mm = 10;  // over the marks it joins
constexpr double furthest_px = 160;               // of a text from its mark
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

std::vector<Box> StageNotes::chief_marks() const {
  const viewer::Stage& stage = subject_.stage();
  std::vector<Box> chief;
  for (const viewer::SeenMark& mark : stage.marks()) {
    if (!mark.visible || mark.thing == viewer::Thing::landmarks || mark.thing == viewer::Thing::grid)
      continue;
    const Pixel there = stage.project(mark.at);
    const double reach = viewer::reach_px(mark.shape) * stage.sight().scale;
    chief.push_back({there.x - reach, there.y - reach, there.x + reach, there.y + reach});
  }
  return chief;
}

bool StageNotes::is_free(const Box& box) const {
  const viewer::Stage& stage = subject_.stage();
  if (!box.inside(
          {0, 0, static_cast<double>(stage.sight().width_px), static_cast<double>(stage.sight().height_px)}))
    return false;
  const auto hits = [&](const auto& other) { return other.box.overlaps(box); };
  const auto& captions = stage.captions();
  const auto& labels = stage.labels();
  return std::none_of(captions.begin(), captions.end(), hits) &&
         std::none_of(drawn_.begin(), drawn_.end(), hits) && std::none_of(labels.begin(), labels.end(), hits);
}

Pixel StageNotes::place_for(const Pixel& at, const StageNote& note) {
  const double scale = subject_.stage().sight().scale, clear = (viewer::reach_px(note.shape) + 4) * scale;
  const viewer::TextSize size = text_.measure(note.text.toStdString(), style);
  const std::vector<Box> chief = chief_marks();
  std::optional<Pixel> over_a_mark;
  // Outward in rings until the plan's own labels and captions are clear, and its chief marks if they can be.
  for (double away = clear; away < furthest_px * scale; away += 0.7 * size.height)
    for (const Pixel& p :
         {Pixel{at.x + away, at.y - size.height / 2}, Pixel{at.x - away - size.width, at.y - size.height / 2},
          Pixel{at.x + clear, at.y + away}, Pixel{at.x - clear - size.width, at.y + away},
          Pixel{at.x + clear, at.y - away - size.height},
          Pixel{at.x - clear - size.width, at.y - away - size.height}}) {
      const Box box{p.x, p.y, p.x + size.width, p.y + size.height};
      if (!is_free(box)) continue;
      if (std::none_of(chief.begin(), chief.end(), [&](const Box& other) { return other.overlaps(box); }))
        return p;
      if (!over_a_mark) over_a_mark = p;
    }
  return over_a_mark.value_or(Pixel{at.x + clear, at.y + clear});
}

void StageNotes::draw(const StageNote& note, const geometry::Head& head) {
  const viewer::Sight& s = subject_.stage().sight();
  const Eigen::Vector3d& place = note.line.empty() ? note.at : note.line[note.line.size() / 2];
  const viewer::Mark mark = viewer::make_mark(viewer::Thing::labels, {}, note.shape, {}, place,
                                              viewer::calm_normal(head.skin(), place), note.along);
  if (!note.line.empty()) ink_.line(note.line, line_px, note.colour, line_lift_mm);
  if (!viewer::in_sight(head.skin(), mark.at, mark.normal, s)) return;
  if (note.line.empty()) ink_.mark(mark, note.colour);
  if (note.text.isEmpty()) return;
  const Pixel anchor = s.project(mark.at), at = place_for(anchor, note);
  const viewer::TextSize size = text_.measure(note.text.toStdString(), style);
  const Pixel near{std::clamp(anchor.x, at.x, at.x + size.width),
                   std::clamp(anchor.y, at.y, at.y + size.height)};
  if (std::hypot(near.x - anchor.x, near.y - anchor.y) > leader_px * s.scale)
    text_.line(anchor, near, 1.1, viewer::palette::quiet_text);
  text_.text(note.text.toStdString(), at, style);
  drawn_.push_back({note.text, mark.at, {at.x, at.y, at.x + size.width, at.y + size.height}});
}

void StageNotes::draw() {
  viewer::Stage& stage = subject_.stage();
  // Sizes of text are in pixels of the screen already; the widget would scale them again on a dense one.
  subject_.plan_renderer()->GetRenderWindow()->SetDPI(72);
  drawn_.clear();
  if (subject_.plan()) stage.refresh();
  ink_.begin(stage.sight());
  text_.begin(stage.sight());
  if (subject_.plan())
    for (const StageNote& note : notes_) draw(note, subject_.plan()->head);
  ink_.done();
  text_.done();
}

}  // namespace scalpmark::window
