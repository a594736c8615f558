#include "viewer/stage/drawing/free_corner.h"

#include <limits>

namespace scalpmark::viewer {

Box free_corner(double width, double height, double gap, const Box& free, const Coverage& head,
                const std::vector<Caption>& taken) {
  std::vector<Box> corners;
  const auto box_at = [&](double left, double top) { return Box{left, top, left + width, top + height}; };
  double legend_top = free.bottom;
  for (const Caption& c : taken)
    if (c.is_legend) legend_top = c.box.top - gap;
  corners.push_back(box_at(free.left, legend_top - height));
  corners.push_back(box_at(free.right - width, free.bottom - height));
  corners.push_back(box_at(free.right - width, free.top));
  corners.push_back(box_at(free.left, free.top));
  Box box = corners.front();
  double least = std::numeric_limits<double>::infinity();
  for (const Box& corner : corners) {
    double cost = head.share(corner);
    for (const Caption& c : taken) cost += corner.overlaps(c.box) ? 10 : 0;
    if (corner.top < free.top || corner.left < free.left) cost += 10;
    if (cost < least) {
      least = cost;
      box = corner;
    }
  }
  return box;
}

}  // namespace scalpmark::viewer
