// The nine search spots: where each pulse goes (discs), where its edge mark lies (bars), and a line that
// links the two.
#include "viewer/stage/things/things.h"
#include "viewer/words/words.h"

namespace scalpmark::viewer {

ShowThing show_grid;

namespace {

/// The link follows the skin: so many corners.
constexpr int link_corners = 16;

std::string spot_name(const geometry::GridSpot& spot, const char* what) {
  const auto with_sign = [](int n) { return (n > 0 ? "+" : "") + std::to_string(n); };
  return "grid " + with_sign(spot.row) + " " + with_sign(spot.column) + " " + what;
}

}  // namespace

Part show_grid(const Showing& now, Surroundings& around) {
  Part part;
  part.thing = Thing::grid;
  if (!now.shown.has(Thing::grid)) return part;
  const geometry::Surface& skin = now.head.skin();
  for (const auto& spot : now.plan.grid) {
    const auto& p = spot.placement;
    if (!now.is_in_hotspot_ring(p.pulse))
      part.marks.push_back(
          now.mark(Thing::grid, spot_name(spot, "pulse"), Shape::small_disc, Role::pulse, p.pulse, p.front));
    const auto& mark = p.edge_mark.by(now.the_case.coil.laid_by);
    if (!mark) continue;
    part.marks.push_back(now.mark(Thing::grid, spot_name(spot, "edge mark"), Shape::small_bar,
                                  Role::edge_mark, *mark, p.normal.cross(p.front)));
    std::vector<Eigen::Vector3d> link;
    for (int i = 0; i <= link_corners; ++i) {
      const Eigen::Vector3d chord = p.pulse + (*mark - p.pulse) * i / link_corners;
      link.push_back(skin.position(skin.closest(chord)));
    }
    part.lines.push_back({std::move(link), 1.2, Role::grid_link, 1.2});
  }
  const auto explain = [&](Shape shape, Role role, const std::string& text) {
    around.legend.push_back({LegendRow::Sample::shape, shape, role, text, at_grid_in_legend});
  };
  explain(Shape::small_disc, Role::pulse, words(Words::tr("Search grid: pulse points")));
  explain(Shape::small_bar, Role::edge_mark, words(Words::tr("Search grid: edge marks")));
  return part;
}

}  // namespace scalpmark::viewer
