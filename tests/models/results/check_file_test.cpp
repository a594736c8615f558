#include "models/results/check_file.h"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

#include "geometry/plan/solve.h"
#include "models/coils/coil_library.h"
#include "tests/support/heads.h"
#include "tests/support/json_schema.h"

using namespace scalpmark;
using namespace scalpmark::geometry;
using nlohmann::ordered_json;
using tests::JsonSchema;

namespace {

ordered_json written(const Head& head, const models::CheckFound& found) {
  const std::string text = models::check_json(head, found);
  CHECK(JsonSchema("check.schema.json").objection(text).empty());
  return ordered_json::parse(text);
}

}  // namespace

TEST_CASE(
    "a check's file is valid by its schema, says what was found, and is sure only where the marks are") {
  const Head head = tests::sphere_head(90, 5);
  Case the_case;
  the_case.coil.model = models::coil("figure-8-70");
  use_one_rule(the_case, MarkRule::tape);
  const Plan plan = solve(head, the_case);
  const Placement& t = plan.treatment;
  const TapeFinder finder(head);
  const TapeFrom site = *t.pulse_tape, edge = *t.edge_mark_tape;
  models::CheckFound found;
  found.site = find_mark(finder, {site.vertex_mm, site.nasion_mm, site.left_tragus_mm, {}});
  found.edge = find_mark(finder, {edge.vertex_mm, edge.nasion_mm, {}, edge.right_tragus_mm});
  REQUIRE(found.site->is_sure());
  REQUIRE(found.edge->is_sure());
  const auto point = [](const FoundMark& mark) { return mark.places[*mark.taken].point; };
  found.check = check_marks(head, the_case, plan, point(*found.site), point(*found.edge));

  ordered_json json = written(head, found);
  CHECK(json["verdict"] == "agrees");
  CHECK(json["site"]["places"].size() == 1);
  CHECK(json["site"]["taken"] == 0);
  CHECK(json["site"]["nearest_to_plan"] == false);
  for (std::size_t k = 0; k < 3; ++k) {
    const double pulse = t.pulse[static_cast<Eigen::Index>(k)];
    CHECK(json["site"]["places"][0]["at"][k].get<double>() == Approx(pulse).margin(0.1));
    CHECK(json["pulse"][k].get<double>() == Approx(pulse).margin(0.2));
  }
  CHECK(json["pulse_off_mm"].get<double>() < 0.2);
  CHECK(json["angle_deg"].get<double>() == Approx(45).margin(0.2));
  CHECK(json["limits"]["pulse_mm"] == 5);

  // Forward and toward the midline, by the marks moved so; the edge mark lies where the head falls away, and
  // moves along it by about three quarters.
  const Eigen::Vector3d moved = 8 * t.forward + 6 * t.inward;
  found.check = check_marks(head, the_case, plan, head.skin().closest(t.pulse + moved),
                            head.skin().closest(*t.mark + moved));
  json = written(head, found);
  CHECK(json["verdict"] == "move");
  CHECK(json["forward_mm"].get<double>() == Approx(7).margin(1.5));
  CHECK(json["toward_midline_mm"].get<double>() == Approx(5).margin(1.5));

  // One mark not measured; one with two places; one too vague.
  models::CheckFound half = found;
  half.edge.reset();
  half.check.reset();
  json = written(head, half);
  CHECK(json["edge"].is_null());
  CHECK(json["pulse"].is_null());
  CHECK(json["pulse_off_mm"].is_null());
  CHECK(json["verdict"] == "unsure");

  half = found;
  half.site = find_mark(finder, {site.vertex_mm, {}, site.left_tragus_mm, site.right_tragus_mm});
  half.check.reset();
  json = written(head, half);
  CHECK(json["site"]["places"].size() == 2);
  CHECK(json["site"]["taken"].is_null());
  CHECK(json["verdict"] == "unsure");
  take_nearest(*half.site, head, head.skin().closest(t.pulse));
  half.check = found.check;
  json = written(head, half);
  CHECK(json["site"]["nearest_to_plan"] == true);
  CHECK(json["verdict"] == "move");

  half = found;
  half.edge->places[0].spread_mm = vague_mm + 0.1;
  json = written(head, half);
  CHECK_FALSE(json["pulse"].is_null());
  CHECK(json["verdict"] == "unsure");
}
