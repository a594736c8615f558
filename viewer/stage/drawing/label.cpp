#include "viewer/stage/drawing/label.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <optional>
#include <utility>

namespace scalpmark::viewer {

namespace {

/// How far out labels with a leader line are tried, pixels of a picture 800 high.
constexpr std::array<double, 10> far_px{26, 40, 58, 80, 106, 138, 176, 220, 270, 330};
constexpr int directions = 24;
/// What standing on the head costs a label, in pixels of distance it would rather go.
constexpr double cost_on_head = 110;
/// What covering a mark costs it: more than any way round.
constexpr double cost_on_mark = 1000, cost_on_chief_mark = 10000;
/// What being read as the name of another symbol costs: less than covering one, more than any way round.
constexpr double cost_of_wrong_name = 600;
/// A label with a leader keeps that far from others' symbols, pixels of a picture 800 high.
constexpr double clear_of_others_px = 8;
/// Symbols this near to each other are one place, which no label can tell apart.
constexpr double one_place_px = 5;

double turn(const Pixel& a, const Pixel& b, const Pixel& c) {
  return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
}

bool cross(const Pixel& a, const Pixel& b, const Pixel& c, const Pixel& d) {
  return turn(a, b, c) * turn(a, b, d) < 0 && turn(c, d, a) * turn(c, d, b) < 0;
}

bool line_meets(const Pixel& a, const Pixel& b, const Box& box) {
  const Pixel tl{box.left, box.top}, tr{box.right, box.top}, bl{box.left, box.bottom},
      br{box.right, box.bottom};
  return cross(a, b, tl, br) || cross(a, b, tr, bl);
}

/// The box of that size whose nearest point lies `distance` from the anchor in direction (dx, dy).
Box beside(const LabelWish& wish, double dx, double dy, double distance) {
  const double x = wish.anchor.x + dx * distance, y = wish.anchor.y + dy * distance;
  const double left = x - 0.5 * wish.width * (1 - dx), top = y - 0.5 * wish.height * (1 - dy);
  return {left, top, left + wish.width, top + wish.height};
}

Pixel nearest_of(const Box& box, const Pixel& p) {
  return {std::clamp(p.x, box.left, box.right), std::clamp(p.y, box.top, box.bottom)};
}

/// How a label there could be taken for another symbol's, as a cost.
double wrong_name_cost(const LabelWish& wish, const Box& box, bool leader,
                       const std::vector<MarkInPicture>& marks, double scale) {
  const double own = away(box, wish.anchor);
  const Pixel end = nearest_of(box, wish.anchor);
  double cost = 0;
  for (const auto& m : marks) {
    if (!m.symbol) continue;
    const Pixel middle = m.middle();
    if (std::hypot(middle.x - wish.anchor.x, middle.y - wish.anchor.y) < one_place_px * scale) continue;
    const double other = away(box, middle);
    if (leader ? other < clear_of_others_px * scale || line_meets(wish.anchor, end, m.box) : other <= own)
      cost += cost_of_wrong_name;
  }
  return cost;
}

}  // namespace

double away(const Box& box, const Pixel& from) {
  const Pixel there = nearest_of(box, from);
  return std::hypot(there.x - from.x, there.y - from.y);
}

double Coverage::share(const Box& box) const {
  int on = 0, all = 0;
  const auto cell = [this](double px, int count) {
    return std::clamp(static_cast<int>(px / cell_px), 0, std::max(0, count - 1));
  };
  if (columns == 0 || rows == 0) return 0;
  for (int r = cell(box.top, rows); r <= cell(box.bottom, rows); ++r)
    for (int c = cell(box.left, columns); c <= cell(box.right, columns); ++c) {
      ++all;
      if (covered[static_cast<size_t>(r) * static_cast<size_t>(columns) + static_cast<size_t>(c)]) ++on;
    }
  return static_cast<double>(on) / all;
}

namespace {

struct Placed {
  std::vector<PlacedLabel> labels;
  double cost = 0;
  std::optional<Pixel> covering;  ///< anchor of the first label that covers a chief mark
};

Placed place_in_order(std::vector<LabelWish> wishes, const Box& canvas, const std::vector<Box>& taken,
                      const std::vector<MarkInPicture>& marks, const Coverage& head, double scale) {
  std::stable_sort(wishes.begin(), wishes.end(),
                   [](const LabelWish& a, const LabelWish& b) { return a.priority > b.priority; });
  Placed all;
  std::vector<PlacedLabel>& placed = all.labels;
  for (const auto& wish : wishes) {
    std::optional<Box> best;
    double best_cost = 0;
    const auto consider = [&](double dx, double dy, double distance, bool leader) {
      const Box box = beside(wish, dx, dy, distance);
      if (!box.inside(canvas)) return;
      for (const auto& t : taken)
        if (box.overlaps(t)) return;
      const Pixel end = nearest_of(box, wish.anchor);
      double cost = distance / scale + (dx < -0.1 ? 3 : 0) + (std::abs(dx) < 0.5 ? 2 : 0);
      for (const auto& p : placed) {
        if (box.overlaps(p.box)) return;
        if (leader && line_meets(wish.anchor, end, p.box)) return;
        if (p.leader) {
          const Pixel other = nearest_of(p.box, p.wish.anchor);
          if (line_meets(p.wish.anchor, other, box)) return;
          if (leader && cross(wish.anchor, end, p.wish.anchor, other)) return;
        }
      }
      for (const auto& m : marks)
        if (box.overlaps(m.box)) {
          if (!wish.may_go_far) return;
          cost += m.chief ? cost_on_chief_mark : cost_on_mark;
        }
      if (wish.may_go_far) cost += cost_on_head * head.share(box);
      if (!best || cost < best_cost) cost += wrong_name_cost(wish, box, leader, marks, scale);
      if (!best || cost < best_cost) {
        best = box;
        best_cost = cost;
      }
    };
    const auto around = [&](double distance, bool leader, int ways = directions) {
      for (int i = 0; i < ways; ++i) {
        const double a = 2 * std::numbers::pi * i / ways;
        consider(std::cos(a), std::sin(a), distance, leader);
      }
    };
    const double close = wish.clear_px + 2 * scale;
    around(close, false);
    if (wish.may_go_far)
      for (const double far : far_px) around(wish.clear_px + far * scale, true);
    // Hemmed in by other labels' lines: looked for more closely before a mark is covered.
    if (wish.may_go_far && (!best || best_cost >= cost_of_wrong_name))
      for (const double far : far_px)
        for (const double part : {0.85, 1.0, 1.15})
          around(wish.clear_px + part * far * scale, true, 6 * directions);
    if (best) {
      const Pixel end = nearest_of(*best, wish.anchor);
      const bool leader = std::hypot(end.x - wish.anchor.x, end.y - wish.anchor.y) > close + 8 * scale;
      placed.push_back({wish, *best, leader});
      all.cost += best_cost;
      if (best_cost >= cost_on_chief_mark && !all.covering) all.covering = wish.anchor;
    }
  }
  return all;
}

}  // namespace

std::vector<PlacedLabel> place_labels(std::vector<LabelWish> wishes, const Box& canvas,
                                      const std::vector<Box>& taken, const std::vector<MarkInPicture>& marks,
                                      const Coverage& head, double scale) {
  // A label that others have hemmed in so that it must cover a chief mark is tried again before them.
  constexpr int most_tries = 4;
  Placed best = place_in_order(wishes, canvas, taken, marks, head, scale);
  Placed last = best;
  for (int i = 1; i < most_tries && last.covering; ++i) {
    int first = 0;
    for (const auto& w : wishes) first = std::max(first, w.priority + 1);
    for (auto& w : wishes)
      if (w.may_go_far && w.anchor.x == last.covering->x && w.anchor.y == last.covering->y)
        w.priority = first;
    last = place_in_order(wishes, canvas, taken, marks, head, scale);
    if (last.labels.size() >= best.labels.size() ? last.cost < best.cost : best.covering && !last.covering)
      best = last;
  }
  return best.labels;
}

}  // namespace scalpmark::viewer
