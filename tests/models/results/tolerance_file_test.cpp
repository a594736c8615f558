#include "models/results/tolerance_file.h"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

#include "geometry/base/message.h"
#include "geometry/plan/solve.h"
#include "models/cases/case_file.h"
#include "models/coils/coil_library.h"
#include "tests/support/heads.h"
#include "tests/support/json_schema.h"

using namespace scalpmark;
using nlohmann::ordered_json;
using tests::JsonSchema;

TEST_CASE("a tolerance's file is valid by its schema and says what the tolerance says") {
  const geometry::Head head = tests::sphere_head(90, 5);
  geometry::Case the_case;
  the_case.coil.model = models::coil("figure-8-70");
  geometry::use_one_rule(the_case, geometry::MarkRule::tape);
  const auto plan = geometry::solve(head, the_case, geometry::TapeDistances::left_out);
  const auto strips = geometry::with_strips(head, the_case, plan, the_case.errors, {0.4, 1.5});
  for (const int placements : {0, 40}) {
    const geometry::ToleranceOptions options{.placements = placements, .seed = 7};
    const auto t = geometry::tolerance(head, the_case, plan, the_case.errors, options);
    const std::string text = models::tolerance_json(
        t, plan, the_case.errors, options, geometry::Message::of("Measure %1 times.", 2),
        placements == 0 ? std::optional<geometry::WithStrips>() : strips);
    CHECK(JsonSchema("tolerance.schema.json").objection(text).empty());
    const auto json = ordered_json::parse(text);
    CHECK(json["errors"]["fiducial_mm"] == the_case.errors.fiducial_mm);
    CHECK(json["seed"] == 7);
    CHECK(json["first_order"]["mean_mm"].get<double>() == Approx(t.first_order.mean_mm).margin(0.0005));
    CHECK(json["first_order"]["ellipse_95"]["long_mm"].get<double>() ==
          Approx(t.first_order.most.long_mm).margin(0.0005));
    CHECK(json["pulses"].size() == t.pulses.size());
    CHECK(json["habit"] == "Measure 2 times.");
    CHECK(json["strips"].is_null() == (placements == 0));
    if (placements > 0) {
      CHECK(json["strips"]["gluing_mm"] == 0.4);
      CHECK(json["strips"]["laying_mm"] == 1.5);
      CHECK(json["strips"]["mean_mm"].get<double>() == Approx(strips.mean_mm).margin(0.0005));
      CHECK(json["strips"]["tapes_mean_mm"].get<double>() == Approx(t.first_order.mean_mm).margin(0.0005));
      CHECK(json["strips"]["alone_mm"].get<double>() == Approx(strips.alone_mm).margin(0.0005));
    }
    REQUIRE(json["causes"].size() == t.causes.size());
    CHECK(json["causes"][0]["share"].get<double>() == Approx(t.causes[0].share).margin(1e-4));
    CHECK(json["at_depth"]["depth_mm"] == geometry::assumed_depth_mm);
    CHECK(json["at_depth"]["depth_of"] == "assumption");
    CHECK(json["at_depth"]["follows"] == (t.at_depth.of_field ? "field" : "axis"));
    CHECK(json["field_left"].is_null() == !t.field_left.has_value());
    if (t.field_left)
      CHECK(json["field_left"]["median"].get<double>() == Approx(t.field_left->median).margin(5e-5));
    CHECK(json["at_depth"]["first_order"]["mean_mm"].get<double>() ==
          Approx(t.at_depth.first_order.mean_mm).margin(0.0005));
    CHECK(json["first_order"]["ellipse_50"].contains("outline"));
    REQUIRE(json["ways"].size() == t.ways.size());
    CHECK(json["ways"].back()["mean_mm"].get<double>() == Approx(t.ways.back().mean_mm).margin(0.0005));
    CHECK(json["ways"].back()["marks"].size() == t.ways.back().marks.size());
    if (placements == 0)
      CHECK(json["sampled"].is_null());
    else
      CHECK(json["sampled"]["most_within_mm"].get<double>() == Approx(t.most_mm).margin(0.0005));
  }
}

TEST_CASE("a case keeps the errors its user changed, and no others") {
  models::CaseFile kept = models::default_case();
  CHECK(models::case_json(kept).find("errors") == std::string::npos);
  kept.the_case.errors.tape_mm = 2.5;
  kept.the_case.errors.other_rule_percent = 0;
  const std::string text = models::case_json(kept);
  CHECK(JsonSchema("case.schema.json").objection(text).empty());
  const auto again = models::parse_case(text, ".", "case.json");
  CHECK(again.the_case.errors == kept.the_case.errors);
}
