#include "models/results/tolerance_file.h"

#include "models/cases/settings_json.h"
#include "models/files/json_numbers.h"
#include "models/files/safe_file.h"
#include "models/files/strict_json.h"

namespace scalpmark::models {

using Eigen::Vector2d;
using nlohmann::ordered_json;

namespace {

const char* key_of(geometry::Cause cause) {
  switch (cause) {
    case geometry::Cause::fiducials:
      return "fiducials";
    case geometry::Cause::tape:
      return "tape";
    case geometry::Cause::marks:
      return "marks";
    case geometry::Cause::angle:
      return "angle";
    case geometry::Cause::rule:
      return "rule";
    case geometry::Cause::cap:
      return "cap";
    case geometry::Cause::tilt:
      return "tilt";
  }
  return "";
}

ordered_json flat(const Vector2d& v) {
  return {rounded(v.x(), length_steps), rounded(v.y(), length_steps)};
}

ordered_json points(const std::vector<Eigen::Vector3d>& all) {
  ordered_json list = ordered_json::array();
  for (const auto& p : all) list.push_back(point(p));
  return list;
}

ordered_json ellipse_json(const geometry::SkinEllipse& e) {
  ordered_json out;
  out["centre_mm"] = flat(e.centre);
  out["long_mm"] = number(e.long_mm);
  out["short_mm"] = number(e.short_mm);
  out["long_axis_deg"] = number(e.long_axis_deg);
  out["outline"] = points(e.outline);
  return out;
}

ordered_json spread_json(const geometry::Spread& s) {
  ordered_json out;
  out["mean_mm"] = number(s.mean_mm);
  out["offset_mm"] = flat(s.mean);
  out["covariance_mm2"] = {flat(s.covariance.row(0)), flat(s.covariance.row(1))};
  out["ellipse_50"] = ellipse_json(s.half);
  out["ellipse_95"] = ellipse_json(s.most);
  return out;
}

}  // namespace

std::string tolerance_json(const geometry::Tolerance& t, const geometry::Plan& plan,
                           const geometry::HandErrors& errors, const geometry::ToleranceOptions& options,
                           const geometry::Message& habit) {
  ordered_json out;
  out["format"] = "scalpmark-tolerance";
  out["version"] = 1;
  out["errors"] = errors_json(errors);
  out["placements"] = t.placements;
  out["lost"] = t.lost;
  out["seed"] = options.seed;
  out["planned"] = {{"pulse", point(plan.treatment.pulse)},
                    {"forward", vector(plan.treatment.forward, direction_steps)},
                    {"outward", vector(-plan.treatment.inward, direction_steps)}};
  out["first_order"] = spread_json(t.first_order);
  out["sampled"] = nullptr;
  if (t.placements > 0) {
    out["sampled"] = spread_json(t.sampled);
    out["sampled"]["half_within_mm"] = number(t.half_mm);
    out["sampled"]["most_within_mm"] = number(t.most_mm);
  }
  out["causes"] = ordered_json::array();
  for (const auto& c : t.causes)
    out["causes"].push_back({{"cause", key_of(c.cause)},
                             {"share", rounded(c.share, 1e4)},
                             {"alone_mm", number(c.alone_mm)},
                             {"without_mm", number(c.without_mm)},
                             {"halved_mm", number(c.halved_mm)}});
  out["habit"] = english(habit);
  out["pulses"] = points(t.pulses);
  return pretty_json(out);
}

void write_tolerance(const std::filesystem::path& file, const geometry::Tolerance& tolerance,
                     const geometry::Plan& plan, const geometry::HandErrors& errors,
                     const geometry::ToleranceOptions& options, const geometry::Message& habit) {
  write_whole(file, tolerance_json(tolerance, plan, errors, options, habit));
}

}  // namespace scalpmark::models
