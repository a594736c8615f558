// What hands lay and draw on a head in an exercise: the tape with its print, pencil marks, a finger that
// feels for the bone. Nothing of the plan's.
#include <algorithm>

#include "viewer/stage/scene/practise_shown.h"
#include "viewer/stage/scene/printed_tape.h"
#include "viewer/stage/things/things.h"

namespace scalpmark::viewer {

using Eigen::Vector3d;

ShowThing show_practise;

namespace {

// Pencil strokes are as long as hands draw them, mm.
constexpr double pencil_line_mm = 8, pencil_cross_mm = 4.5;
constexpr double point_px = 3, stroke_px = 2.2, over_tape_mm = 2.4;
constexpr double finger_px = 9, hand_px = 4.5, over_marks_mm = 3.2;

Colour finger_tint(double bump) {
  const double share = 0.15 + 0.85 * std::clamp(bump, 0.0, 1.0);
  return paler(palette::finger, share);
}

void add_stroke(const Vector3d& at, const Vector3d& half, Role role, Part& part) {
  part.lines.push_back({{at - half, at + half}, stroke_px, role, over_tape_mm});
}

void add_pencil(const PractiseShown::Pencil& mark, Part& part) {
  using Kind = PractiseShown::Pencil::Kind;
  const Role role = mark.faint ? Role::quiet_text : Role::todays;
  Vector3d x = mark.along - mark.along.dot(mark.normal) * mark.normal;
  if (x.norm() < 1e-6) x = mark.normal.unitOrthogonal();
  x.normalize();
  const Vector3d y = mark.normal.cross(x);
  switch (mark.kind) {
    case Kind::point:
      part.spots.push_back({mark.at, point_px, role, over_tape_mm, mark.normal});
      break;
    case Kind::line:
      add_stroke(mark.at, pencil_line_mm * x, role, part);
      break;
    case Kind::cross:
      for (const double turned : {-1.0, 1.0})
        add_stroke(mark.at, pencil_cross_mm * (x + turned * y).normalized(), role, part);
      break;
  }
}

}  // namespace

Part show_practise(const Showing& now, Surroundings& /*around*/) {
  Part part;
  part.thing = Thing::labels;
  part.pickable = false;
  if (!now.shown.practise) return part;
  const PractiseShown& shown = *now.shown.practise;
  if (shown.tape && shown.tape->line.size() > 1)
    part.ribbons.push_back(printed_tape(shown.tape->line, shown.tape->normals));
  for (const auto& mark : shown.pencil) add_pencil(mark, part);
  if (shown.finger) {
    Spot finger{shown.finger->at, finger_px, Role::text, over_marks_mm};
    finger.tint = finger_tint(shown.finger->bump);
    part.spots.push_back(finger);
  }
  if (shown.hand) {
    part.spots.push_back({*shown.hand, hand_px, Role::halo, over_marks_mm});
    part.spots.push_back({*shown.hand, hand_px - 1.5, Role::casing, over_marks_mm + 0.2});
  }
  return part;
}

}  // namespace scalpmark::viewer
