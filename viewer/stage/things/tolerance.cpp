#include "viewer/stage/things/tolerance.h"

#include "viewer/words/numbers.h"
#include "viewer/words/words.h"

namespace scalpmark::viewer {

namespace {

/// More specks would be a blot.
constexpr size_t most_specks = 500;
constexpr double speck_px = 1.1, half_px = 2.6, most_px = 1.5;
constexpr double over_skin_mm = 1.6;  ///< toward the eye, as the tape lines

}  // namespace

void ToleranceEllipses::show(const geometry::Head&, const Shown& shown) {
  tolerance_ = shown.has(Thing::tolerance) ? shown.tolerance : nullptr;
}

void ToleranceEllipses::draw(const geometry::Head& head, const Sight& sight) {
  ink_.begin(sight);
  names_.clear();
  if (tolerance_) {
    const geometry::Tolerance& t = *tolerance_;
    const geometry::Spread& spread = t.placements > 0 ? t.sampled : t.first_order;
    const auto seen = [&](const Eigen::Vector3d& p) {
      return in_sight(head.skin(), p, calm_normal(head.skin(), p), sight);
    };
    for (size_t i = 0; i < std::min(most_specks, t.pulses.size()); ++i)
      if (seen(t.pulses[i])) ink_.spot(t.pulses[i], speck_px, paler(palette::pulse, 0.5), over_skin_mm);
    ink_.line(spread.most.outline, most_px, palette::pulse, over_skin_mm);
    ink_.line(spread.half.outline, half_px, palette::pulse, over_skin_mm);
    const auto name = [&](const geometry::SkinEllipse& e, const std::string& text) {
      Name n{text, {}, false};
      double lowest = 1e300;
      for (const auto& p : e.outline) {
        const Pixel at = sight.project(p);
        if (at.y >= lowest || !seen(p)) continue;
        lowest = at.y;
        n.at = p;
        n.visible = true;
      }
      names_.push_back(n);
    };
    name(spread.most, words(Words::tr("95 of 100 placements by hand")));
    name(spread.half, words(Words::tr("half of them")));
  }
  ink_.done();
}

void ToleranceEllipses::wish(std::vector<LabelWish>& labels, const Sight& sight) const {
  for (const Name& n : names_) {
    if (!n.visible) continue;
    LabelWish wish;
    wish.text = n.text;
    wish.anchor = sight.project(n.at);
    wish.clear_px = 3 * sight.scale;
    wish.may_go_far = true;
    wish.priority = 90;
    wish.colour = palette::pulse;
    labels.push_back(wish);
  }
}

}  // namespace scalpmark::viewer
