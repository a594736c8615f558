#include "viewer/page/kernel/side_json.h"

#include <cmath>

namespace scalpmark::viewer {

using Eigen::Vector2d;
using nlohmann::ordered_json;

namespace {

double hundredths(double mm) {
  return std::round(100 * mm) / 100 + 0.0;
}

ordered_json flat_point(const Vector2d& at) {
  return {hundredths(at.x()), hundredths(at.y())};
}

ordered_json flat_point(const std::optional<Vector2d>& at) {
  return at ? flat_point(*at) : ordered_json(nullptr);
}

}  // namespace

ordered_json side_json(const geometry::SideView& view) {
  ordered_json out;
  out["skin"] = ordered_json::array();
  for (const Vector2d& p : view.skin) {
    out["skin"].push_back(hundredths(p.x()));
    out["skin"].push_back(hundredths(p.y()));
  }
  out["face"] = hundredths(view.face_mm);
  out["back"] = hundredths(view.back_mm);
  out["edge"] = flat_point(view.edge);
  for (const geometry::MarkRule rule : geometry::all_mark_rules)
    out["marks"][geometry::key_of(rule)] = flat_point(view.by(rule));
  return out;
}

}  // namespace scalpmark::viewer
