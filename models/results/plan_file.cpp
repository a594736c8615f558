#include "models/results/plan_file.h"

#include "models/files/json_numbers.h"
#include "models/files/made_by.h"
#include "models/files/safe_file.h"
#include "models/files/strict_json.h"
#include "models/results/placement_json.h"

namespace scalpmark::models {

using nlohmann::ordered_json;

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
