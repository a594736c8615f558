#include "viewer/stage/drawing/label.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <cmath>
#include <limits>
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
/// What a leader line through another symbol costs, and a label over a line that is looked at.
constexpr double cost_through_symbol = 400, cost_on_line = 150;

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

}  // namespace

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

double distance_px(const Box& a, const Box& b) {
  const double x = std::max({0.0, a.left - b.right, b.left - a.right});
  const double y = std::max({0.0, a.top - b.bottom, b.top - a.bottom});
  return std::hypot(x, y);
}

namespace {

/// One label after the other, each around those that are placed.
class Layout {
public:
  explicit Layout(const LabelGround& ground) : ground_(ground) {}

  void place(const LabelWish& wish) {
    best_.reset();
    close_px_ = wish.clear_px + 2 * ground_.scale;
    if (const auto& way = wish.only_along) {
      consider(wish, way->x, way->y, close_px_, false);
      consider(wish, -way->x, -way->y, close_px_, false);
    } else {
      around(wish, close_px_, false);
    }
    if (wish.may_go_far)
      for (const double far : far_px) around(wish, wish.clear_px + far * ground_.scale, true);
    // Hemmed in by others: looked for more closely.
    if (wish.may_go_far && (!best_ || best_->cost >= cost_on_line))
      for (const double far : far_px)
        for (const double part : {0.85, 1.0, 1.15})
          around(wish, wish.clear_px + part * far * ground_.scale, true, 6 * directions);
    if (best_)
      out_.placed.push_back({wish, best_->box, best_->leader});
    else
      out_.without_room.push_back(wish);
  }

  [[nodiscard]] LabelLayout take() { return std::move(out_); }

private:
  struct Candidate {
    Box box;
    double cost = 0;
    bool leader = false;
  };

  void around(const LabelWish& wish, double distance, bool far, int ways = directions) {
    for (int i = 0; i < ways; ++i) {
      const double a = 2 * std::numbers::pi * i / ways;
      consider(wish, std::cos(a), std::sin(a), distance, far);
    }
  }

  void consider(const LabelWish& wish, double dx, double dy, double distance, bool far) {
    const Box box = beside(wish, dx, dy, distance);
    if (!box.inside(ground_.canvas)) return;
    if (std::any_of(ground_.taken.begin(), ground_.taken.end(),
                    [&](const Box& t) { return box.overlaps(t); }))
      return;
    const Pixel end = nearest_of(box, wish.anchor);
    const bool leader =
        far && std::hypot(end.x - wish.anchor.x, end.y - wish.anchor.y) > close_px_ + 8 * ground_.scale;
    if (!is_free_of_labels(wish.anchor, end, box, leader)) return;
    double cost = distance / ground_.scale + (dx < -0.1 ? 3 : 0) + (std::abs(dx) < 0.5 ? 2 : 0);
    if (!is_told_apart(wish, end, box, leader, cost)) return;
    if (std::any_of(ground_.lines.begin(), ground_.lines.end(),
                    [&](const Box& l) { return box.overlaps(l); }))
      cost += cost_on_line;
    if (wish.may_go_far) cost += cost_on_head * ground_.head.share(box);
    if (!best_ || cost < best_->cost) best_ = Candidate{box, cost, leader};
  }

  [[nodiscard]] bool is_free_of_labels(const Pixel& anchor, const Pixel& end, const Box& box,
                                       bool leader) const {
    for (const PlacedLabel& p : out_.placed) {
      if (box.overlaps(p.box)) return false;
      if (leader && line_meets(anchor, end, p.box)) return false;
      if (!p.leader) continue;
      const Pixel other = nearest_of(p.box, p.wish.anchor);
      if (line_meets(p.wish.anchor, other, box)) return false;
      if (leader && cross(anchor, end, p.wish.anchor, other)) return false;
    }
    return true;
  }

  /// Whether nobody could take it for another symbol's.
  [[nodiscard]] bool is_told_apart(const LabelWish& wish, const Pixel& end, const Box& box, bool leader,
                                   double& cost) const {
    const double same_px = one_place_px * ground_.scale;
    // From its own symbol; from its place, where it has none.
    double own_px = distance_px(box, {wish.anchor.x, wish.anchor.y, wish.anchor.x, wish.anchor.y});
    double other_px = std::numeric_limits<double>::infinity();
    bool through = false;
    for (const SymbolInPicture& s : ground_.symbols) {
      const double away = distance_px(box, s.box);
      if (away == 0) return false;
      if (std::hypot(s.at.x - wish.anchor.x, s.at.y - wish.anchor.y) < same_px) {
        own_px = std::min(own_px, away);
        continue;
      }
      other_px = std::min(other_px, away);
      through = through || (leader && line_meets(wish.anchor, end, s.box));
    }
    if (through) cost += cost_through_symbol;
    return leader ? other_px >= clear_of_others_px * ground_.scale : other_px > own_px;
  }

  const LabelGround& ground_;
  LabelLayout out_;
  std::optional<Candidate> best_;
  double close_px_ = 0;
};

}  // namespace

LabelLayout place_labels(std::vector<LabelWish> wishes, const LabelGround& ground) {
  std::stable_sort(wishes.begin(), wishes.end(),
                   [](const LabelWish& a, const LabelWish& b) { return a.priority > b.priority; });
  Layout layout(ground);
  for (const LabelWish& wish : wishes) layout.place(wish);
  return layout.take();
}

bool shorten(std::vector<LabelWish>& wishes, const std::vector<LabelWish>& without_room, bool by_name) {
  const auto begun_large = [](std::string text) {
    if (!text.empty())
      text.front() = static_cast<char>(std::toupper(static_cast<unsigned char>(text.front())));
    return text;
  };
  bool any = false;
  for (LabelWish& w : wishes) {
    if (w.aside.empty()) continue;
    const auto same = [&](const LabelWish& o) { return o.text == w.text && o.priority == w.priority; };
    if (std::none_of(without_room.begin(), without_room.end(), same)) continue;
    const std::string in_short = begun_large(w.aside);
    const std::string shorter = by_name ? in_short.substr(0, in_short.find(", ")) : in_short;
    any = any || shorter != w.text;
    w.text = shorter;
  }
  return any;
}

}  // namespace scalpmark::viewer
