// What is noted on the stage besides the plan: marks and lines with their texts.
#include <cmath>

#include "viewer/stage/scene/note.h"
#include "viewer/stage/things/things.h"

namespace scalpmark::viewer {

using Eigen::Vector3d;

ShowThing show_notes;

namespace {

constexpr double note_line_px = 3, note_lift_mm = 10;  // over the marks it joins
constexpr double note_letter_px = 15;

Label label_of(const Note& note, double clear_px) {
  Label label;
  label.text = note.text;
  label.clear_px = clear_px;
  label.may_go_far = true;
  label.priority = note.priority;
  label.bold = true;
  label.size_px = note_letter_px;
  label.aside = note.text;
  return label;
}

/// As on a tape: a tick every half centimetre, a longer one at every whole.
std::vector<Tick> half_centimetres(const Showing& now, const std::vector<Vector3d>& line) {
  constexpr double every_mm = 5, short_px = 4, long_px = 7;
  std::vector<Tick> ticks;
  double next_mm = 0, before_mm = 0;
  for (std::size_t i = 1; i < line.size(); ++i) {
    const Vector3d way = line[i] - line[i - 1];
    const double length = way.norm();
    for (; length > 0 && next_mm <= before_mm + length; next_mm += every_mm) {
      Tick tick;
      tick.at = line[i - 1] + (next_mm - before_mm) / length * way;
      tick.normal = now.normal_at(tick.at);
      tick.across = tick.normal.cross(way).normalized();
      tick.half_px = std::lround(next_mm / every_mm) % 2 == 0 ? long_px : short_px;
      ticks.push_back(tick);
    }
    before_mm += length;
  }
  return ticks;
}

void add_line(const Showing& now, const Note& note, Part& part) {
  Line line{note.line, note_line_px, note.role, note_lift_mm};
  line.keep_clear = true;
  if (note.ticked) line.ticks = half_centimetres(now, note.line);
  part.lines.push_back(std::move(line));
  if (note.text.empty()) return;
  const Vector3d& middle = note.line[note.line.size() / 2];
  part.words.push_back({middle, now.normal_at(middle), label_of(note, 6)});
}

}  // namespace

Part show_notes(const Showing& now, Surroundings& /*around*/) {
  Part part;
  part.thing = Thing::labels;
  for (const Note& note : now.shown.notes) {
    if (!note.line.empty()) {
      add_line(now, note, part);
      continue;
    }
    Mark mark = now.mark(Thing::labels, note.text, note.shape, note.role, note.at, note.along);
    if (!note.text.empty()) mark.label = label_of(note, reach_px(note.shape) + 2);
    part.marks.push_back(std::move(mark));
  }
  return part;
}

}  // namespace scalpmark::viewer
