// Where the coil laid by each visit's marks put its pulse: a small disc each, the last and those outside the
// limits with their numbers, and the ellipses that would hold half and 95 of 100 of such visits.
#include "viewer/stage/things/things.h"
#include "viewer/words/words.h"

namespace scalpmark::viewer {

ShowThing show_course;

namespace {

constexpr double course_half_px = 2.6, course_most_px = 1.5, over_course_mm = 1.6;

Line ellipse_line(const Showing& now, const std::vector<Eigen::Vector3d>& outline, double width_px,
                  const std::string& text) {
  Line line{outline, width_px, Role::pulse, over_course_mm};
  Label label;
  label.text = text;
  label.clear_px = 3;
  label.may_go_far = true;
  label.priority = 90;
  label.role = Role::pulse;
  line.label = label;
  for (const auto& p : outline) line.normals.push_back(now.normal_at(p));
  return line;
}

}  // namespace

Part show_course(const Showing& now, Surroundings& around) {
  Part part;
  part.thing = Thing::course;
  if (!now.shown.has(Thing::course) || !now.shown.course) return part;
  const CourseShown& course = *now.shown.course;
  for (const CourseShown::At& at : course.visits) {
    Mark mark = now.mark(Thing::course, "visit " + std::to_string(at.visit), Shape::small_disc, Role::pulse,
                         at.pulse, now.plan.treatment.front);
    if (at.outside || &at == &course.visits.back()) {
      Label label;
      label.text = words(Words::tr("visit %1"), {std::to_string(at.visit)});
      label.priority = &at == &course.visits.back() ? 110 : 95;
      label.may_go_far = true;
      mark.label = label;
    }
    part.marks.push_back(std::move(mark));
  }
  if (course.ellipses) {
    part.lines.push_back(
        ellipse_line(now, course.ellipses->most, course_most_px, words(Words::tr("95 of 100 such visits"))));
    part.lines.push_back(
        ellipse_line(now, course.ellipses->half, course_half_px, words(Words::tr("half of them"))));
  }
  if (!part.marks.empty())
    around.legend.push_back({LegendRow::Sample::shape, Shape::small_disc, Role::pulse,
                             words(Words::tr("Pulse by each visit's marks")), at_tolerance_in_legend});
  return part;
}

}  // namespace scalpmark::viewer
