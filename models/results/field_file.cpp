#include "models/results/field_file.h"

#include "models/files/json_numbers.h"
#include "models/files/safe_file.h"
#include "models/files/strict_json.h"

namespace scalpmark::models {

using geometry::CoilMoved;
using nlohmann::ordered_json;

namespace {

/// What every mention of the field in a file of results says.
constexpr const char* field_note =
    "in a round model head that fits the skin around the coil; not this patient's field, no dose and no effect";
constexpr const char* field_unit = "V/m for a current that changes by 1 A/us";
constexpr double field_steps = 1e6;  // per V/m
constexpr double share_steps = 1e4;

const char* key_of(CoilMoved moved) {
  switch (moved) {
    case CoilMoved::gap:
      return "gap_mm";
    case CoilMoved::roll:
      return "roll_deg";
    case CoilMoved::pitch:
      return "pitch_deg";
    case CoilMoved::ahead:
      return "slip_ahead_mm";
    case CoilMoved::aside:
      return "slip_aside_mm";
    case CoilMoved::turn:
      return "turn_deg";
  }
  return "";
}

ordered_json strength(double field) {
  return rounded(field, field_steps);
}

}  // namespace

std::string field_json(const geometry::CoilField& f, const geometry::Case& the_case,
                       const FieldAsked& asked) {
  const geometry::FieldMap& map = f.map;
  ordered_json out;
  out["format"] = "scalpmark-field";
  out["version"] = 1;
  out["note"] = field_note;
  out["unit"] = field_unit;
  out["coil"] = the_case.coil.model.model;
  out["on"] = asked.on;
  out["pulse"] = point(f.laid.pose.pulse);
  out["lift_mm"] = number(f.lift_mm);
  out["sphere"] = {{"centre", point(f.round.centre)},
                   {"radius_mm", number(f.round.radius_mm)},
                   {"misfit_mm", number(f.round.misfit_mm)}};
  out["looked_at_on"] = f.sheet.of_brain ? "brain" : "sphere";
  out["at"] = ordered_json::array();
  for (const auto& there : asked.at)
    out["at"].push_back({{"point", point(there.point)}, {"field", vector(there.field, field_steps)}});
  out["under_centre"] = ordered_json::array();
  for (const auto& d : map.under_centre)
    out["under_centre"].push_back({{"depth_mm", number(d.depth_mm)}, {"field", strength(d.field)}});
  out["strongest"] = {{"point", point(map.strongest.point)},
                      {"field", strength(map.strongest.strength())},
                      {"from_pulse_mm", number(map.from_pulse_mm)},
                      {"from_axis_mm", number(map.from_axis_mm)},
                      {"line_from_front_deg", number(map.from_front_deg)}};
  out["patch_cm2"] = {{"half", number(map.half.area_cm2)},
                      {"seven_tenths", number(map.seven_tenths.area_cm2)}};
  out["gap_ratio"] = ordered_json::array();
  out["moved_ratio"] = ordered_json::array();
  for (const auto& m : asked.moved) {
    ordered_json one = {{key_of(m.moved), number(m.by)}, {"ratio", rounded(m.ratio, share_steps)}};
    out[m.moved == CoilMoved::gap ? "gap_ratio" : "moved_ratio"].push_back(one);
  }
  out["half_value_depth_mm"] = number(asked.depth.half_depth_mm);
  out["spread_cm2"] = number(asked.depth.spread_cm2);
  out["sentences"] = geometry::english(asked.sentences);
  return pretty_json(out);
}

void write_field(const std::filesystem::path& file, const geometry::CoilField& field,
                 const geometry::Case& the_case, const FieldAsked& asked) {
  write_whole(file, field_json(field, the_case, asked));
}

}  // namespace scalpmark::models
