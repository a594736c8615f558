// Where the coil's induced field goes in a round model head: two nested tints where it has more than half and
// more than 71 % of its strongest, on the brain where one is shown, else on a sphere 2 cm under the skin; the
// line it runs along, with two ends alike, since which one leads is the device's; beside the head how it
// falls with depth. Seen through the skin, which it lies under. Nobody's own field, and it says so.
#include <cmath>

#include "viewer/stage/scene/field_shown.h"
#include "viewer/stage/things/things.h"
#include "viewer/words/field_words.h"
#include "viewer/words/numbers.h"
#include "viewer/words/words.h"

namespace scalpmark::viewer {

using Eigen::Vector3d;

ShowThing show_field;

namespace {

constexpr double field_line_px = 3;
/// The line's ends, mm from the strongest place, and half of the strokes across them.
constexpr double line_half_mm = 20, end_half_mm = 4;

Tint tint_of(const geometry::FieldPatch& patch, double opacity) {
  return {patch.triangles, patch.outline, Role::field, opacity, field_outline_px};
}

/// Two ends alike.
void add_line(const geometry::CoilField& field, SeenThrough& through) {
  const geometry::FieldThere& at = field.map.strongest;
  const Vector3d along = at.field.normalized();
  const Vector3d across = (at.point - field.round.centre).cross(along).normalized();
  const Vector3d a = at.point - line_half_mm * along, b = at.point + line_half_mm * along;
  through.lines.push_back({{a, b}, field_line_px, Role::text});
  for (const Vector3d& end : {a, b})
    through.lines.push_back(
        {{end - end_half_mm * across, end + end_half_mm * across}, field_line_px, Role::text});
}

DepthCurve curve_of(const geometry::FieldMap& map) {
  DepthCurve curve;
  const double whole = map.under_centre.front().field;
  for (const geometry::FieldAtDepth& f : map.under_centre)
    curve.points.emplace_back(f.depth_mm, f.field / whole);
  curve.title = words(Words::tr("Field under the coil's centre"));
  curve.depth = words(Words::tr("%1 under the skin", "cm or inches"), {tape_unit()});
  return curve;
}

/// Whether there is a column beside the head to read in; a lesson has its caption instead.
bool has_readings(const Shown& shown) {
  return shown.has(Thing::legend) || shown.has(Thing::numbers);
}

/// In the column, or where there is none with the caution: that it is a model's, and nobody's own.
void say_whose(const Shown& shown, Surroundings& around) {
  const std::string what = words(Words::tr("Induced field, in a round model head")),
                    whose =
                        words(Words::tr("Not this patient's field; no dose and no effect follow from it."));
  if (!has_readings(shown)) {
    if (!around.caution.empty()) around.caution = what + ". " + whose + " " + around.caution;
    return;
  }
  using enum Remark::Weight;
  around.with_column = true;
  around.remarks.push_back({what, heading});
  if (!shown.field) {
    around.remarks.push_back({words(Words::tr("No field is known of this coil here.")), quiet});
    return;
  }
  around.remarks.push_back({words(field_remark(*shown.field))});
  around.remarks.push_back({whose, quiet});
}

}  // namespace

Part show_field(const Showing& now, Surroundings& around) {
  Part part;
  part.thing = Thing::field;
  part.pickable = false;
  if (!now.shown.has(Thing::field)) return part;
  say_whose(now.shown, around);
  if (!now.shown.field) return part;
  const geometry::CoilField& field = *now.shown.field;
  around.legend.push_back({LegendRow::Sample::field, Shape::disc, Role::field,
                           words(Words::tr("Field over 71 %, over half (model)")), at_field_in_legend});
  SeenThrough through;
  through.inside = field.round.centre;
  through.tints = {tint_of(field.map.half, field_wide_opacity),
                   tint_of(field.map.seven_tenths, field_core_opacity)};
  if (!is_ring(field.map)) {
    add_line(field, through);
    around.legend.push_back({LegendRow::Sample::line, Shape::disc, Role::text,
                             words(Words::tr("Line of the field (model)")), at_field_in_legend});
    if (has_readings(now.shown) && !field.map.under_centre.empty()) around.depth_curve = curve_of(field.map);
  }
  part.through = std::move(through);
  return part;
}

}  // namespace scalpmark::viewer
