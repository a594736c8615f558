// Landmarks as small round dots with their labels.
#include <algorithm>

#include "viewer/stage/things/things.h"
#include "viewer/words/words.h"

namespace scalpmark::viewer {

ShowThing show_landmarks;

namespace {

constexpr int chief_priority = label_priority::fiducial, ten_twenty_priority = 30, other_priority = 10;

bool is_ten_twenty(const std::string& name) {
  const auto& labels = geometry::landmark_labels(geometry::LandmarkSystem::ten_twenty);
  return std::find(labels.begin(), labels.end(), name) != labels.end();
}

std::string shown_name(const std::string& name) {
  if (name == "Nz") return words(Words::tr("nasion"));
  if (name == "Iz") return words(Words::tr("inion"));
  if (name == "Cz") return words(Words::tr("Cz (vertex)"));
  if (name == "left tragus") return words(Words::tr("left tragus"));
  if (name == "right tragus") return words(Words::tr("right tragus"));
  return name;
}

}  // namespace

Part show_landmarks(const Showing& now, Surroundings& around) {
  Part part;
  part.thing = Thing::landmarks;
  if (!now.shown.has(Thing::landmarks)) return part;
  const auto add = [&](const std::string& name, const Eigen::Vector3d& at, bool chief) {
    Mark mark = now.mark(Thing::landmarks, name, Shape::dot, Role::landmark, at, now.plan.axes.front);
    Label label;
    label.text = shown_name(name);
    label.clear_px = reach_px(mark.shape) + 1.5;
    label.priority = chief ? chief_priority : is_ten_twenty(name) ? ten_twenty_priority : other_priority;
    label.may_go_far = chief;
    mark.label = label;
    part.marks.push_back(std::move(mark));
  };
  for (const auto& l : now.shown.other_landmarks ? *now.shown.other_landmarks : now.plan.landmarks)
    if (now.shown.has_landmark(l.name)) add(l.name, l.at, l.name == "Nz" || l.name == "Iz" || l.name == "Cz");
  add("left tragus", now.plan.fiducials.left_tragus, true);
  add("right tragus", now.plan.fiducials.right_tragus, true);
  around.legend.push_back({LegendRow::Sample::shape, Shape::dot, Role::landmark, words(Words::tr("Landmark")),
                           at_landmarks_in_legend});
  return part;
}

}  // namespace scalpmark::viewer
