// The template's brain under the skin, with the place under the coil lit and a line down to it from the pulse
// point, and what lies there in words: depth, Brodmann area, gyrus, and that a person's own brain differs.
#include "viewer/stage/things/cortex.h"

#include <algorithm>
#include <cmath>

#include "viewer/stage/things/things.h"
#include "viewer/words/numbers.h"
#include "viewer/words/words.h"

namespace scalpmark::viewer {

ShowThing show_cortex;

namespace {

constexpr int legend_place = 90;
constexpr double lit_radius_mm = 12;

std::string percent(double share) {
  return std::to_string(std::lround(100 * share)) + "\u00a0%";  // never broken between lines
}

std::vector<std::string> in_words(const std::optional<geometry::CortexHit>& under, UnderCoil how) {
  std::vector<std::string> lines;
  if (how == UnderCoil::lit) return lines;
  if (how == UnderCoil::left_out)
    return {words(Words::tr("Under the skin")),
            words(Words::tr("The brain as on the template; a person's own brain differs."))};
  lines.push_back(words(Words::tr("Under the coil")));
  if (under) {
    lines.push_back(words(Words::tr("%1 from skin to cortex"), {in_mm(under->depth_mm)}));
    lines.push_back(shares_in_words(under->areas));
    lines.push_back(shares_in_words(under->gyri));
  } else {
    lines.push_back(words(Words::tr("no cortex straight below")));
  }
  lines.push_back(words(Words::tr("All this on the template; a person's own brain differs.")));
  return lines;
}

}  // namespace

std::string shares_in_words(const std::vector<geometry::RegionShare>& shares) {
  constexpr double worth_saying = 0.15;
  if (shares.empty()) return words(Words::tr("no named region"));
  std::string text = shares[0].name + " (" + percent(shares[0].share) + ")";
  if (shares.size() < 2 || shares[1].share < worth_saying) return text;
  const std::string &first = shares[0].name, &second = shares[1].name;
  // Words they begin with alike are said once.
  size_t from = 0;
  for (size_t i = 0; i < std::min(first.size(), second.size()) && first[i] == second[i]; ++i)
    if (first[i] == ' ') from = i + 1;
  return text + ", " + second.substr(from) + " (" + percent(shares[1].share) + ")";
}

Part show_cortex(const Showing& now, Surroundings& around) {
  Part part;
  part.thing = Thing::cortex;
  part.pickable = false;
  const Shown& shown = now.shown;
  if (!shown.has(Thing::cortex)) return part;
  around.with_column = around.with_column || shown.under_coil != UnderCoil::lit;
  if (shown.under_coil != UnderCoil::left_out)
    around.legend.push_back({LegendRow::Sample::lit, Shape::disc, Role::lit,
                             words(Words::tr("Cortex under the coil (template)")), legend_place});
  if (!shown.cortex) return part;
  around.remarks = in_words(now.placement.cortex, shown.under_coil);
  part.body = Body{shown.cortex->surface(), Role::cortex, 0.3, 0.75};
  const auto& under = now.placement.cortex;
  if (!under || shown.under_coil == UnderCoil::left_out) return part;
  part.body->glow = Glow{under->point, lit_radius_mm, Role::lit};
  part.lines.push_back({{now.placement.pulse, under->point}, 2.5, Role::construction, 0.5});
  part.spots.push_back({under->point, 8, Role::construction, 1.5});
  part.spots.push_back({under->point, 6, Role::lit, 2});
  return part;
}

}  // namespace scalpmark::viewer
