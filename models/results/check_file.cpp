#include "models/results/check_file.h"

#include "models/files/json_numbers.h"
#include "models/files/safe_file.h"
#include "models/files/strict_json.h"
#include "models/results/cap_json.h"

namespace scalpmark::models {

using nlohmann::ordered_json;

namespace {

ordered_json mark_json(const geometry::Surface& skin, const std::optional<geometry::FoundMark>& mark) {
  if (!mark) return nullptr;
  ordered_json out;
  out["places"] = ordered_json::array();
  for (const geometry::FoundPlace& place : mark->places)
    out["places"].push_back({{"at", point(skin.position(place.point))},
                             {"misfit_mm", number(place.misfit_mm)},
                             {"worst_mm", number(place.worst_mm)},
                             {"spread_mm", number(place.spread_mm)}});
  out["taken"] = mark->taken ? ordered_json(*mark->taken) : ordered_json(nullptr);
  out["nearest_to_plan"] = mark->nearest_to_plan;
  return out;
}

const char* verdict_of(const CheckFound& found) {
  if (!found.check || !is_sure(found)) return "unsure";
  return found.check->verdict == geometry::Verdict::good ? "agrees" : "move";
}

}  // namespace

bool is_sure(const CheckFound& found) {
  return found.site && found.site->is_sure() && found.edge && found.edge->is_sure();
}

std::string check_json(const geometry::Head& head, const CheckFound& found) {
  ordered_json out;
  out["format"] = "scalpmark-check";
  out["version"] = 1;
  out["site"] = mark_json(head.skin(), found.site);
  out["edge"] = mark_json(head.skin(), found.edge);
  const auto of_check = [&](double geometry::Check::*value, double sign = 1) {
    return found.check ? number(sign * *found.check.*value) : ordered_json(nullptr);
  };
  out["pulse"] = found.check ? point(found.check->as_laid.pulse) : ordered_json(nullptr);
  out["pulse_off_mm"] = of_check(&geometry::Check::pulse_off_mm);
  out["forward_mm"] = of_check(&geometry::Check::forward_mm);
  out["toward_midline_mm"] = of_check(&geometry::Check::outward_mm, -1);
  out["angle_deg"] = of_check(&geometry::Check::angle_deg);
  out["angle_off_deg"] = of_check(&geometry::Check::angle_error_deg);
  out["limits"] = {{"pulse_mm", number(found.limits.pulse_mm)},
                   {"angle_deg", number(found.limits.angle_deg)}};
  if (found.cap) out["cap"] = cap_json(*found.cap);
  out["verdict"] = verdict_of(found);
  return pretty_json(out);
}

void write_check(const std::filesystem::path& file, const geometry::Head& head, const CheckFound& found) {
  write_whole(file, check_json(head, found));
}

}  // namespace scalpmark::models
