// The template's brain under the skin, with the place under the coil lit and a line down to it from the pulse
// point, and what lies there in words: depth, Brodmann area, gyrus, and that a person's own brain differs.

#include <algorithm>
#include <cmath>

#include "viewer/stage/things/things.h"
#include "viewer/words/cortex_words.h"
#include "viewer/words/numbers.h"
#include "viewer/words/words.h"

namespace scalpmark::viewer {

ShowThing show_cortex;

namespace {

constexpr double lit_radius_mm = 12;

std::vector<Remark> in_words(const std::optional<geometry::CortexHit>& under, UnderCoil how) {
  using enum Remark::Weight;
  std::vector<Remark> lines;
  if (how == UnderCoil::lit) return lines;
  if (how == UnderCoil::left_out)
    return {{words(Words::tr("Under the skin")), heading},
            {words(Words::tr("The brain as on the template; a person's own brain differs.")), quiet}};
  lines.push_back({words(Words::tr("Under the coil")), heading});
  if (under) {
    lines.push_back({words(Words::tr("%1 from skin to cortex"), {depth_in_words(*under)})});
    lines.push_back({regions_in_words(under->areas)});
    lines.push_back({regions_in_words(under->gyri)});
  } else {
    lines.push_back({words(Words::tr("no cortex under the pulse point"))});
  }
  lines.push_back({words(Words::tr("All this on the template; a person's own brain differs.")), quiet});
  return lines;
}

/// Soft: all of the light where the field is strongest, none where it has half of that.
std::shared_ptr<const std::vector<LitCorner>> lit_by(const geometry::CoilField& field) {
  auto lit = std::make_shared<std::vector<LitCorner>>();
  const double most = field.map.strongest.strength();
  for (size_t i = 0; i < field.map.strengths.size(); ++i)
    if (const double share = 2 * field.map.strengths[i] / most - 1; share > 0)
      lit->push_back({field.sheet.corners[i], std::min(1.0, share)});
  return lit;
}

}  // namespace

Part show_cortex(const Showing& now, Surroundings& around) {
  Part part;
  part.thing = Thing::cortex;
  part.pickable = false;
  const Shown& shown = now.shown;
  if (!shown.has(Thing::cortex)) return part;
  around.with_column = around.with_column || shown.under_coil != UnderCoil::lit;
  if (shown.under_coil != UnderCoil::left_out && !shown.has(Thing::field))
    around.legend.push_back({LegendRow::Sample::lit, Shape::disc, Role::lit,
                             words(Words::tr("Cortex under the coil (template)")), at_cortex_in_legend});
  if (!shown.cortex) return part;
  for (Remark& remark : in_words(now.placement.cortex, shown.under_coil))
    around.remarks.push_back(std::move(remark));
  part.body = Body{shown.cortex->surface(), Role::cortex, 0.3, 0.75};
  const auto& under = now.placement.cortex;
  if (!under || shown.under_coil == UnderCoil::left_out) return part;
  if (shown.under_coil == UnderCoil::lit && shown.field && shown.field->sheet.of_brain) {
    part.body->glow = Glow{under->point, 0, Role::field, lit_by(*shown.field)};
    return part;
  }
  // Where the field is shown, its patch is what is lit.
  if (!shown.has(Thing::field)) part.body->glow = Glow{under->point, lit_radius_mm, Role::lit};
  part.lines.push_back({{now.placement.pulse, under->point}, 2.5, Role::construction, 0.5});
  return part;
}

}  // namespace scalpmark::viewer
