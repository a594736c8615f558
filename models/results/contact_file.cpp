#include "models/results/contact_file.h"

#include "models/files/json_numbers.h"
#include "models/files/safe_file.h"
#include "models/files/strict_json.h"
#include "models/results/cortex_note.h"

namespace scalpmark::models {

using nlohmann::ordered_json;

namespace {

const char* key_of(geometry::Region region) {
  switch (region) {
    case geometry::Region::scalp:
      return "scalp";
    case geometry::Region::left_ear:
      return "left_ear";
    case geometry::Region::right_ear:
      return "right_ear";
    case geometry::Region::face:
      return "face";
  }
  return "";
}

const char* key_of(geometry::Wing wing) {
  switch (wing) {
    case geometry::Wing::left:
      return "left wing";
    case geometry::Wing::right:
      return "right wing";
    case geometry::Wing::whole:
      return "coil";
  }
  return "";
}

ordered_json flat_point(const Eigen::Vector2d& v) {
  return {rounded(v.x(), length_steps), rounded(v.y(), length_steps)};
}

ordered_json askew_json(const geometry::AskewAxis& axis, const std::optional<geometry::FieldAskew>& field) {
  ordered_json out;
  out["skin"] = point(axis.skin);
  out["skin_moved_mm"] = number(axis.skin_moved_mm);
  out["cortex"] = nullptr;
  if (axis.cortex)
    out["cortex"] = {{"point", point(axis.cortex->point)},
                     {"depth_mm", number(axis.cortex->depth_mm)},
                     {"moved_mm", number(axis.cortex_moved_mm)},
                     {"note", cortex_note}};
  out["field"] = nullptr;
  if (field)
    out["field"] = {{"strongest", point(field->strongest.point)},
                    {"moved_mm", number(field->moved_mm)},
                    {"left", rounded(field->left, 1e4)},
                    {"note", "in a round model head, 20 mm under its skin; not this patient's field"}};
  return out;
}

}  // namespace

std::string contact_json(const geometry::Contact& c, const geometry::Case& the_case,
                         const ContactAsked& asked) {
  ordered_json out;
  out["format"] = "scalpmark-contact";
  out["version"] = 1;
  out["coil"] = the_case.coil.model.model;
  out["on"] = asked.on;
  out["cap_and_hair_mm"] = number(the_case.coil.lift_mm);
  out["cap_mm"] = number(asked.options.cap_mm);
  out["tilt"] = {{"roll_deg", number(c.tilt.roll_deg)}, {"pitch_deg", number(c.tilt.pitch_deg)}};
  out["planned_pulse"] = point(asked.placement.pulse);
  out["pose"] = {{"pulse", point(c.pose.pulse)},
                 {"normal", vector(c.pose.normal, direction_steps)},
                 {"front", vector(c.pose.front, direction_steps)}};
  out["lift_mm"] = number(c.lift_mm);
  out["resting_lift_mm"] = number(c.resting_lift_mm);
  out["rests_on_wings"] = c.rests_on_wings;
  out["rock_deg"] = number(c.rock_deg);
  out["presses_cap_mm"] = number(c.presses_cap_mm);
  out["touches"] = ordered_json::array();
  for (const auto& t : c.touches)
    out["touches"].push_back({{"part", t.part},
                              {"region", key_of(t.region)},
                              {"skin", point(t.skin)},
                              {"under_mm", flat_point(t.under)}});
  out["wings"] = ordered_json::array();
  for (const auto& w : c.wings)
    out["wings"].push_back({{"wing", key_of(w.wing)},
                            {"least_mm", number(w.least_mm)},
                            {"mean_mm", number(w.mean_mm)},
                            {"most_mm", number(w.most_mm)},
                            {"middle_mm", number(w.centre_mm)},
                            {"off_head", number(w.off_head)}});
  out["hits"] = ordered_json::array();
  for (const auto& o : c.hits)
    out["hits"].push_back({{"part", o.part},
                           {"region", key_of(o.region)},
                           {"skin", point(o.skin)},
                           {"raises_mm", number(o.raises_mm)}});
  out["askew"] = c.askew ? askew_json(*c.askew, asked.field) : ordered_json(nullptr);
  out["gaps"] = ordered_json::array();
  for (const auto& g : c.map)
    out["gaps"].push_back({{"part", the_case.coil.model.parts[g.part].name},
                           {"under_mm", flat_point(g.at)},
                           {"on_coil", point(g.on_coil)},
                           {"gap_mm", number(g.gap_mm)}});
  out["sentences"] = geometry::english(asked.sentences);
  return pretty_json(out);
}

void write_contact(const std::filesystem::path& file, const geometry::Contact& contact,
                   const geometry::Case& the_case, const ContactAsked& asked) {
  write_whole(file, contact_json(contact, the_case, asked));
}

}  // namespace scalpmark::models
