#include "models/results/field_file.h"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

#include "geometry/base/message.h"
#include "geometry/plan/solve.h"
#include "models/coils/coil_library.h"
#include "tests/support/heads.h"
#include "tests/support/json_schema.h"

using namespace scalpmark;
using nlohmann::ordered_json;
using tests::JsonSchema;

TEST_CASE(
    "a field's file is valid by its schema and says what the field says, with every coil, on both sides",
    "[slow]") {
  const geometry::Head head = tests::lopsided_head(5);
  for (const auto& coil : models::coils())
    for (const geometry::Side side : {geometry::Side::left, geometry::Side::right}) {
      geometry::Case the_case;
      the_case.coil.model = coil;
      the_case.side = side;
      the_case.coil.centre_to_edge_mm = coil.centre_to_edge_mm;
      the_case.coil.lift_mm = 3;
      const auto plan = geometry::solve(head, the_case, geometry::TapeDistances::left_out);
      const auto field = geometry::coil_field(head.skin(), nullptr, coil, plan.treatment);
      models::FieldAsked asked;
      asked.on = "treatment";
      asked.at = {{field.map.strongest.point, field.field.at(field.map.strongest.point)}};
      asked.moved = geometry::moved_ratios(head.skin(), coil, field);
      asked.depth = geometry::depth_and_spread(field.field, field.round, field.laid.pose);
      asked.sentences = {geometry::Message::of("In a %1.", "model")};
      const std::string text = models::field_json(field, the_case, asked);
      CAPTURE(coil.model);
      CHECK(JsonSchema("field.schema.json").objection(text).empty());
      const auto json = ordered_json::parse(text);
      CHECK(json["coil"] == coil.model);
      CHECK(json["unit"].get<std::string>().find("1 A/us") != std::string::npos);
      CHECK(json["sphere"]["radius_mm"].get<double>() == Approx(field.round.radius_mm).margin(0.0005));
      CHECK(json["strongest"]["field"].get<double>() == Approx(field.map.strongest.strength()).margin(1e-6));
      CHECK(json["at"][0]["field"][1].get<double>() == Approx(field.map.strongest.field.y()).margin(1e-6));
      CHECK(json["patch_cm2"]["half"].get<double>() == Approx(field.map.half.area_cm2).margin(0.0005));
      CHECK(json["under_centre"].size() == field.map.under_centre.size());
      REQUIRE(json["gap_ratio"].size() == 4);
      CHECK(json["gap_ratio"][2]["gap_mm"] == 5);
      CHECK(json["gap_ratio"].size() + json["moved_ratio"].size() == asked.moved.size());
      CHECK(json["sentences"] == ordered_json{"In a model."});
      CHECK(text.find("not this patient's field") != std::string::npos);
    }
}
