// Where the pulse of the treatment could go when placed by hand: two ellipses on the skin, a strong one that
// holds half of the placements and a thin one that holds 95 of 100, over a few of the placements as specks.
#include <algorithm>

#include "viewer/stage/things/things.h"
#include "viewer/words/words.h"

namespace scalpmark::viewer {

ShowThing show_tolerance;

namespace {

/// More specks would be a blot.
constexpr size_t most_specks = 500;
constexpr double speck_px = 1.1, half_px = 2.6, most_px = 1.5;
constexpr double over_ellipse_mm = 1.6;  ///< as the tape lines

}  // namespace

Part show_tolerance(const Showing& now, Surroundings& around) {
  Part part;
  part.thing = Thing::tolerance;
  if (!now.shown.has(Thing::tolerance) || !now.shown.tolerance) return part;
  const geometry::Tolerance& t = *now.shown.tolerance;
  const geometry::Spread& spread = t.placements > 0 ? t.sampled : t.first_order;
  for (size_t i = 0; i < std::min(most_specks, t.pulses.size()); ++i)
    part.spots.push_back(
        {t.pulses[i], speck_px, Role::pulse_by_hand, over_ellipse_mm, now.normal_at(t.pulses[i])});
  const auto add = [&](const geometry::SkinEllipse& ellipse, double width_px, const std::string& text) {
    Line line{ellipse.outline, width_px, Role::pulse, over_ellipse_mm};
    Label label;
    label.text = text;
    label.clear_px = 3;
    label.may_go_far = true;
    label.priority = label_priority::trials;
    label.role = Role::pulse;
    line.label = label;
    for (const auto& p : ellipse.outline) line.normals.push_back(now.normal_at(p));
    part.lines.push_back(std::move(line));
  };
  add(spread.most, most_px, words(Words::tr("95 of 100 trials by hand")));
  add(spread.half, half_px, words(Words::tr("half of them")));
  around.legend.push_back({LegendRow::Sample::line, Shape::dot, Role::pulse,
                           words(Words::tr("Trials by hand: half, and 95 of 100")), at_tolerance_in_legend});
  return part;
}

}  // namespace scalpmark::viewer
