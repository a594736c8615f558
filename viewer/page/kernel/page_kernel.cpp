#include "viewer/page/kernel/page_kernel.h"

#include <exception>
#include <nlohmann/json.hpp>
#include <string_view>
#include <utility>

#include "geometry/base/error.h"
#include "geometry/hands/find_by_tapes.h"
#include "geometry/head/on_head.h"
#include "geometry/paths/shortest_path.h"
#include "geometry/paths/walk.h"
#include "geometry/plan/placement.h"
#include "geometry/plan/side_view.h"
#include "geometry/plan/solve.h"
#include "geometry/plan/treatment.h"
#include "models/cases/case_file.h"
#include "models/files/json_numbers.h"
#include "models/heads/built_in_head.h"
#include "models/results/check_file.h"
#include "models/results/placement_json.h"
#include "models/results/plan_file.h"
#include "viewer/page/kernel/in_hand.h"
#include "viewer/page/kernel/message_json.h"
#include "viewer/page/kernel/side_json.h"
#include "viewer/page/part_json.h"
#include "viewer/words/check_words.h"

namespace scalpmark::viewer {

using Eigen::Vector3d;
using geometry::SurfacePoint;
using nlohmann::ordered_json;

namespace {

using Json = nlohmann::json;

geometry::Head head_of(const models::CaseFile& file, std::optional<geometry::Surface> skin) {
  if (!skin) return models::built_in_head(file.the_case.tape_mm).head;
  if (!file.head.fiducials)
    throw geometry::GeometryError(
        geometry::Message::of("The head in this page is damaged; have the page written again."));
  return {std::move(*skin), *file.head.fiducials};
}

Vector3d vector_from(const Json& json) {
  return {json.at(0).get<double>(), json.at(1).get<double>(), json.at(2).get<double>()};
}

std::optional<double> number_in(const Json& json, const char* key) {
  const auto at = json.find(key);
  if (at == json.end() || at->is_null()) return {};
  return at->get<double>();
}

geometry::TapeReadings readings_from(const Json& json) {
  return {number_in(json, "vertex"), number_in(json, "nasion"), number_in(json, "left_tragus"),
          number_in(json, "right_tragus")};
}

/// Lengths as the page writes them: so many mm to its unit, decimals, and what stands before those.
LengthInWords length_in(const Json& how) {
  const double mm_per = how.at("mm").get<double>();
  const int decimals = how.at("decimals").get<int>();
  const auto mark = how.at("mark").get<std::string>(), pattern = how.at("pattern").get<std::string>();
  return [=](double mm) {
    return geometry::filled(pattern, {geometry::to_text({mm / mm_per, decimals, true}, mark)});
  };
}

geometry::FoundMark found(const geometry::TapeFinder& finder, const Json& question, const char* which,
                          const char* taken) {
  geometry::FoundMark mark = geometry::find_mark(finder, readings_from(question.at(which)));
  if (const auto place = number_in(question, taken); place && *place >= 0 && *place < 1e6)
    if (const auto i = static_cast<std::size_t>(*place); i < mark.places.size()) mark.taken = i;
  return mark;
}

}  // namespace

struct PageKernel::Parts {
  models::CaseFile file;
  geometry::Head head;
  geometry::Plan plan;
  std::optional<geometry::TapeFinder> finder;

  Parts(models::CaseFile read, std::optional<geometry::Surface> skin)
      : file(std::move(read)),
        head(head_of(file, std::move(skin))),
        plan(geometry::solve(head, file.the_case, geometry::TapeDistances::left_out)) {}

  std::optional<SurfacePoint> place_asked(const Json& question) const;
  ordered_json place(const Json& question) const;
  ordered_json check(const Json& question);
  ordered_json in_sight(const Json& question) const;
  ordered_json answer(const Json& question);
};

std::optional<SurfacePoint> PageKernel::Parts::place_asked(const Json& question) const {
  const geometry::Surface& skin = head.skin();
  if (question.contains("from")) {
    const auto hit =
        skin.ray_hit(vector_from(question.at("from")), vector_from(question.at("way")).normalized());
    if (!hit) return {};
    return hit->point;
  }
  const SurfacePoint at = skin.closest(vector_from(question.at("at")));
  if (!question.contains("nudge")) return at;
  const geometry::Directions ways =
      geometry::directions_at(head, geometry::laying_side(head, file.the_case, at), at);
  const Vector3d way = question.at("nudge").at(0).get<double>() * ways.forward +
                       question.at("nudge").at(1).get<double>() * ways.outward;
  return geometry::walk(skin, at, way.normalized(), way.norm()).end;
}

ordered_json PageKernel::Parts::place(const Json& question) const {
  const auto at = place_asked(question);
  if (!at) return nullptr;
  geometry::CoilSetup setup = file.the_case.coil;
  if (const auto angle_deg = number_in(question, "angle_deg")) setup.angle_deg = *angle_deg;
  const auto placed = geometry::place_coil(
      head, setup, geometry::laying_side(head, file.the_case, *at), *at,
      head.has_fields() ? geometry::TapeDistances::worked_out : geometry::TapeDistances::left_out);
  const geometry::Placement& site = plan.treatment;
  const Vector3d off = placed.pulse - site.wanted;
  ordered_json out;
  out["placement"] = models::placement_json(placed);
  out["frame"] = {{"origin", place_json(placed.pulse + placed.lift_mm * placed.normal)},
                  {"right", direction_json(placed.front.cross(placed.normal))},
                  {"front", direction_json(placed.front)},
                  {"normal", direction_json(placed.normal)}};
  const double far_mm =
      geometry::shortest_distances(head.skin(), head.skin().closest(site.wanted), {*at}).front();
  out["from_site"] = {{"tape_mm", models::number(far_mm)},
                      {"forward_mm", models::number(off.dot(site.forward))},
                      {"inward_mm", models::number(off.dot(site.inward))}};
  out["part"] = part_json(coil_in_hand(head, setup, placed));
  out["side"] = side_json(geometry::side_view(head, setup.model, placed));
  return out;
}

ordered_json PageKernel::Parts::check(const Json& question) {
  if (!finder) finder.emplace(head);
  models::CheckFound today;
  today.site = found(*finder, question, "site", "site_place");
  today.edge = found(*finder, question, "edge", "edge_place");
  ordered_json out;
  if (today.site->taken && today.edge->taken) {
    const auto point = [](const geometry::FoundMark& mark) { return mark.places[*mark.taken].point; };
    today.check = geometry::check_marks(head, file.the_case, plan, point(*today.site), point(*today.edge),
                                        today.limits);
    if (models::is_sure(today))
      out["sentence"] = message_json(check_sentence(*today.check, length_in(question.at("lengths"))));
  }
  out["check"] = models::check_json(head, today);
  return out;
}

ordered_json PageKernel::Parts::in_sight(const Json& question) const {
  Sight sight;
  sight.toward_eye = vector_from(question.at("toward_eye"));
  ordered_json out = ordered_json::array();
  const Json& points = question.at("points");
  const auto number = [&](std::size_t i) { return points.at(i).get<double>(); };
  for (std::size_t i = 0; i + 5 < points.size(); i += 6)
    out.push_back(viewer::in_sight(head.skin(), {number(i), number(i + 1), number(i + 2)},
                                   {number(i + 3), number(i + 4), number(i + 5)}, sight));
  return out;
}

ordered_json PageKernel::Parts::answer(const Json& question) {
  const auto asked = question.at("ask").get<std::string>();
  if (asked == "plan")
    return {{"plan",
             models::plan_json(geometry::solve(head, file.the_case, geometry::TapeDistances::each_path))}};
  if (asked == "place") return {{"place", place(question)}};
  if (asked == "fields") {
    static_cast<void>(head.fields());
    return {{"fields", true}};
  }
  if (asked == "check") return check(question);
  if (asked == "in_sight") return {{"in_sight", in_sight(question)}};
  throw geometry::GeometryError(geometry::Message::verbatim("No such question: " + asked));
}

PageKernel::PageKernel(const std::string& case_json, std::optional<geometry::Surface> skin)
    : parts_(std::make_unique<Parts>(models::parse_case(case_json, {}, "page"), std::move(skin))) {}

PageKernel::~PageKernel() = default;

std::string PageKernel::answer(const std::string& question) const {
  ordered_json out;
  try {
    out = parts_->answer(Json::parse(question));
  } catch (const geometry::Refusal& refusal) {
    out = {{"refused", message_json(refusal.message())}};
  } catch (const std::exception& error) {
    out = {{"refused", message_json(geometry::Message::verbatim(error.what()))}};
  }
  return out.dump();
}

}  // namespace scalpmark::viewer
