// How often each spot of the grid answered: a tally bar beside its real pulse point, filled as far as the
// share of its pulses that were answered, with "3/4" beside it. Filled and empty differ by light and dark.
#include "viewer/stage/things/things.h"
#include "viewer/words/words.h"

namespace scalpmark::viewer {

ShowThing show_answers;

namespace {

/// Between spots a centimetre apart there is room for a bar so long, so far beside the disc.
constexpr double bar_mm = 6.5, beside_mm = 2.6;
constexpr double frame_px = 8, inside_px = 5.6;
constexpr double frame_lift_mm = 1.4, inside_lift_mm = 1.7, filled_lift_mm = 2;

Line bar_line(const Eigen::Vector3d& from, const Eigen::Vector3d& to, double width_px, Role role,
              double lift_mm) {
  return {{from, to}, width_px, role, lift_mm};
}

}  // namespace

Part show_answers(const Showing& now, Surroundings& around) {
  Part part;
  part.thing = Thing::answers;
  if (!now.shown.has(Thing::answers) || !now.shown.answers || !now.shown.answers->map) return part;
  const geometry::VisitAnswers& answers = *now.shown.answers;
  const geometry::Surface& skin = now.head.skin();
  for (std::size_t i = 0; i < answers.spots.size() && i < now.plan.grid.size(); ++i) {
    const geometry::SpotAnswers& spot = answers.map->spots[i];
    if (spot.pulses == 0) continue;
    const geometry::Placement& placed = now.plan.grid[i].placement;
    const auto on_skin = [&](double along_mm) {
      return skin.position(
          skin.closest(placed.pulse + beside_mm * placed.inward + along_mm * placed.forward));
    };
    const double share = static_cast<double>(spot.answers) / spot.pulses;
    const Eigen::Vector3d foot = on_skin(-bar_mm / 2), head = on_skin(bar_mm / 2);
    part.lines.push_back(bar_line(foot, head, frame_px, Role::construction, frame_lift_mm));
    part.lines.push_back(bar_line(foot, head, inside_px, Role::halo, inside_lift_mm));
    if (share > 0)
      part.lines.push_back(
          bar_line(foot, on_skin(bar_mm * (share - 0.5)), inside_px, Role::text, filled_lift_mm));
    Label label;
    label.text = std::to_string(spot.answers) + "/" + std::to_string(spot.pulses);
    label.clear_px = 6;
    label.priority = 110;
    label.bold = true;
    label.may_go_far = true;
    part.words.push_back({foot, now.normal_at(foot), label});
  }
  if (!part.lines.empty())
    around.legend.push_back(
        {LegendRow::Sample::line, Shape::dot, Role::construction,
         words(Words::tr("Bar: pulses answered, at %1 %"), {std::to_string(answers.map->output_percent)}),
         at_grid_in_legend});
  return part;
}

}  // namespace scalpmark::viewer
