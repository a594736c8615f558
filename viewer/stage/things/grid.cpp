#include "viewer/stage/things/grid.h"

namespace scalpmark::viewer {

namespace {

/// The link follows the skin: so many corners.
constexpr int link_corners = 16;

std::string node_name(const geometry::GridNode& node, const char* what) {
  const auto with_sign = [](int n) { return (n > 0 ? "+" : "") + std::to_string(n); };
  return "grid " + with_sign(node.row) + " " + with_sign(node.column) + " " + what;
}

}  // namespace

void Grid::show(const geometry::Head& head, const geometry::Case& entered, const geometry::Plan& plan,
                const Shown& shown) {
  shown_ = shown.has(Thing::grid);
  marks_.clear();
  links_.clear();
  if (!shown_) return;
  for (const auto& node : plan.grid) {
    const auto& p = node.placement;
    const Eigen::Vector3d along_edge = p.normal.cross(p.front);
    marks_.push_back(make_mark(head, Thing::grid, node_name(node, "pulse"), Shape::small_disc, palette::pulse,
                               p.pulse, p.front));
    const auto& mark = p.edge_mark.by(entered.coil.laid_by);
    if (!mark) continue;
    marks_.push_back(make_mark(head, Thing::grid, node_name(node, "edge mark"), Shape::small_bar,
                               palette::edge_mark, *mark, along_edge));
    std::vector<Eigen::Vector3d> link;
    for (int i = 0; i <= link_corners; ++i) {
      const Eigen::Vector3d chord = p.pulse + (*mark - p.pulse) * i / link_corners;
      link.push_back(head.skin().position(head.skin().closest(chord)));
    }
    links_.push_back(std::move(link));
  }
}

void Grid::draw(const geometry::Head& head, const Sight& sight) {
  ink_.begin(sight);
  for (const auto& link : links_) ink_.line(link, 1.2, paler(palette::edge_mark, 0.45), 1.2);
  for (auto& m : marks_) {
    m.visible = in_sight(head.skin(), m.at, m.normal, sight);
    if (m.visible) ink_.mark(m);
  }
  ink_.done();
}

}  // namespace scalpmark::viewer
