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
    case geometry::Cause::sight:
      return "sight";
  }
  return "";
}

const char* key_of(geometry::MarkingWay way) {
  switch (way) {
    case geometry::MarkingWay::front:
      return "front";
    case geometry::MarkingWay::front_line:
      return "front_line";
    case geometry::MarkingWay::front_and_side:
      return "front_and_side";
    case geometry::MarkingWay::corners:
      return "corners";
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
  if (!e.outline.empty()) out["outline"] = points(e.outline);
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

ordered_json within(const geometry::Spread& s, double half_mm, double most_mm) {
  ordered_json out = spread_json(s);
  out["half_within_mm"] = number(half_mm);
  out["most_within_mm"] = number(most_mm);
  return out;
}

ordered_json depth_json(const geometry::Tolerance& t) {
  const geometry::DepthSpread& d = t.at_depth;
  ordered_json out;
  out["depth_mm"] = number(d.depth_mm);
  out["depth_of"] = d.of_brain ? "template_brain" : "assumption";
  out["follows"] = d.of_field ? "field" : "axis";
  out["first_order"] = spread_json(d.first_order);
  out["sampled"] = nullptr;
  if (t.placements > 0) out["sampled"] = within(d.sampled, d.half_mm, d.most_mm);
  return out;
}

ordered_json way_json(const geometry::WayTried& w) {
  ordered_json out;
  out["way"] = key_of(w.way);
  if (w.way == geometry::MarkingWay::front_and_side) out["side_mark"] = w.right_side ? "right" : "left";
  out["mean_mm"] = number(w.mean_mm);
  out["depth_mean_mm"] = number(w.depth_mean_mm);
  out["angle_mean_deg"] = number(w.angle_mean_deg);
  out["marks"] = points(w.marks);
  return out;
}

ordered_json strips_json(const geometry::WithStrips& s) {
  return {{"gluing_mm", number(s.errors.gluing_mm)},
          {"laying_mm", number(s.errors.laying_mm)},
          {"mean_mm", number(s.mean_mm)},
          {"tapes_mean_mm", number(s.tapes_mean_mm)},
          {"alone_mm", number(s.alone_mm)},
          {"tapes_alone_mm", number(s.tapes_alone_mm)},
          {"strips_laid", s.strips_laid},
          {"tapes_read", s.tapes_read}};
}

}  // namespace

std::string tolerance_json(const geometry::Tolerance& t, const geometry::Plan& plan,
                           const geometry::HandErrors& errors, const geometry::ToleranceOptions& options,
                           const geometry::Message& habit,
                           const std::optional<geometry::WithStrips>& strips) {
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
  if (t.placements > 0) out["sampled"] = within(t.sampled, t.half_mm, t.most_mm);
  out["at_depth"] = depth_json(t);
  out["field_left"] = nullptr;
  if (t.field_left)
    out["field_left"] = {{"median", rounded(t.field_left->median, 1e4)},
                         {"worst_5_of_100", rounded(t.field_left->worst, 1e4)}};
  out["angle_mean_deg"] = number(t.angle_mean_deg);
  out["causes"] = ordered_json::array();
  for (const auto& c : t.causes)
    out["causes"].push_back({{"cause", key_of(c.cause)},
                             {"share", rounded(c.share, 1e4)},
                             {"alone_mm", number(c.alone_mm)},
                             {"without_mm", number(c.without_mm)},
                             {"halved_mm", number(c.halved_mm)},
                             {"depth_share", rounded(c.depth_share, 1e4)},
                             {"depth_alone_mm", number(c.depth_alone_mm)}});
  out["ways"] = ordered_json::array();
  for (const auto& w : t.ways) out["ways"].push_back(way_json(w));
  out["strips"] = nullptr;
  if (strips) out["strips"] = strips_json(*strips);
  out["habit"] = english(habit);
  out["pulses"] = points(t.pulses);
  return pretty_json(out);
}

void write_tolerance(const std::filesystem::path& file, const geometry::Tolerance& tolerance,
                     const geometry::Plan& plan, const geometry::HandErrors& errors,
                     const geometry::ToleranceOptions& options, const geometry::Message& habit,
                     const std::optional<geometry::WithStrips>& strips) {
  write_whole(file, tolerance_json(tolerance, plan, errors, options, habit, strips));
}

}  // namespace scalpmark::models
