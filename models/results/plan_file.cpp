#include "models/results/plan_file.h"

#include "models/files/json_numbers.h"
#include "models/files/made_by.h"
#include "models/files/safe_file.h"
#include "models/files/strict_json.h"
#include "models/results/cortex_note.h"

namespace scalpmark::models {

using Eigen::Vector3d;
using nlohmann::ordered_json;

namespace {

ordered_json tape_json(const std::optional<geometry::TapeFrom>& from) {
  if (!from) return nullptr;
  return {{"vertex", number(from->vertex_mm)},
          {"nasion", number(from->nasion_mm)},
          {"left_tragus", number(from->left_tragus_mm)},
          {"right_tragus", number(from->right_tragus_mm)}};
}

ordered_json shares_json(const std::vector<geometry::RegionShare>& shares) {
  ordered_json out = ordered_json::array();
  for (const auto& s : shares) out.push_back({{"name", s.name}, {"share", number(s.share)}});
  return out;
}

ordered_json cortex_json(const geometry::CortexHit& hit) {
  return {{"depth_mm", number(hit.depth_mm)},
          {"nearest_mm", number(hit.nearest_mm)},
          {"median_mm", number(hit.median_mm)},
          {"point", point(hit.point)},
          {"areas", shares_json(hit.areas)},
          {"gyri", shares_json(hit.gyri)},
          {"note", cortex_note}};
}

ordered_json placement_json(const geometry::Placement& p) {
  ordered_json out;
  out["wanted"] = point(p.wanted);
  out["pulse"] = point(p.pulse);
  out["wanted_to_pulse_mm"] = number(p.wanted_to_pulse_mm);
  out["tape_to_draw_mm"] = number(p.tape_to_draw_mm);
  out["normal"] = vector(p.normal, direction_steps);
  out["front"] = vector(p.front, direction_steps);
  out["angle_deg"] = number(p.angle_deg);
  out["lift_mm"] = number(p.lift_mm);
  out["edge"] = point(p.edge);
  out["edge_mark"] = {{"tape", point(p.edge_mark.tape)},
                      {"drop", point(p.edge_mark.drop)},
                      {"nearest", point(p.edge_mark.nearest)}};
  out["mark"] = point(p.mark);
  out["gap_mm"] = {{"drop", number(p.drop_gap_mm)}, {"nearest", number(p.nearest_gap_mm)}};
  out["tape_from_mm"] = {{"pulse", tape_json(p.pulse_tape)}, {"edge_mark", tape_json(p.edge_mark_tape)}};
  if (p.cortex) out["cortex"] = cortex_json(*p.cortex);
  return out;
}

}  // namespace

std::string plan_json(const geometry::Plan& plan) {
  ordered_json out;
  out["format"] = "scalpmark-plan";
  out["version"] = 1;
  out["made_by"] = made_by();
  out["tape_mm"] = {{"nasion_inion", number(plan.tapes.nasion_inion_mm)},
                    {"tragus_tragus", number(plan.tapes.tragus_tragus_mm)},
                    {"circumference", number(plan.tapes.circumference_mm)}};
  out["landmarks"] = ordered_json::object();
  for (const geometry::Landmark& landmark : plan.landmarks)
    out["landmarks"][landmark.name] = point(landmark.at);
  out["search"]["start"] = placement_json(plan.start);
  out["search"]["grid"] = ordered_json::array();
  for (const geometry::GridSpot& spot : plan.grid)
    out["search"]["grid"].push_back(
        {{"row", spot.row}, {"column", spot.column}, {"placement", placement_json(spot.placement)}});
  out["hotspot"] = placement_json(plan.hotspot);
  out["treatment"] = placement_json(plan.treatment);
  out["treatment_alternatives"] = ordered_json::array();
  for (const geometry::TreatmentAlternative& other : plan.treatment_alternatives) {
    ordered_json item;
    if (other.rule == geometry::TreatmentRule::forward) {
      item["rule"] = "forward";
      item["distance_mm"] = number(other.distance_mm);
    } else {
      item["rule"] = "landmark";
      item["label"] = other.label;
    }
    item["pulse"] = point(other.pulse);
    item["tape_from_treatment_mm"] = number(other.tape_from_treatment_mm);
    out["treatment_alternatives"].push_back(std::move(item));
  }
  out["warnings"] = geometry::english(plan.warnings);
  return pretty_json(out);
}

void write_plan(const std::filesystem::path& file, const geometry::Plan& plan) {
  write_whole(file, plan_json(plan));
}

}  // namespace scalpmark::models
