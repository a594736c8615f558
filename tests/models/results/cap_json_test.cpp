#include "models/results/cap_json.h"

#include <catch2/catch.hpp>

#include "geometry/plan/solve.h"
#include "models/results/check_file.h"
#include "tests/support/coils.h"
#include "tests/support/heads.h"
#include "tests/support/json_schema.h"

using namespace scalpmark;

TEST_CASE("how a cap sits is written as its schema says, and what the readings do not say is null") {
  const geometry::Head head = tests::lopsided_head(5);
  geometry::Case the_case;
  the_case.side = geometry::Side::right;
  the_case.coil.model = tests::flat_coil();
  const auto plan = geometry::solve(head, the_case, geometry::TapeDistances::left_out);
  const geometry::Cap cap = geometry::cap_on(head, the_case.cap.brim_over_nasion_mm);
  geometry::BrimReadings read;
  read.heights = geometry::brim_heights(head, cap, {5, -4, 6});
  for (const bool with_arrow : {false, true}) {
    if (with_arrow) read.arrow_mm = geometry::arrow_beside_nasion_mm(head, cap, {5, -4, 6});
    const auto today = geometry::cap_today(head, the_case, plan, read);
    models::CheckFound found;
    found.cap = today;
    const std::string text = models::check_json(head, found);
    CHECK(tests::JsonSchema("check.schema.json").objection(text).empty());
    CHECK(nlohmann::json::parse(text)["verdict"] == "unsure");  // of marks that nobody looked for
    const auto json = nlohmann::json::parse(text)["cap"];
    CHECK(json["sits"] == false);
    CHECK(json["slip"]["forward_deg"].get<double>() == Approx(5).margin(0.3));
    CHECK(json["slip"]["side_deg"].get<double>() == Approx(-4).margin(0.3));
    CHECK(json["slip"]["turn_deg"].is_null() != with_arrow);
    CHECK(json["sd"]["turn_deg"].is_null() != with_arrow);
    CHECK(json["move"]["turn_right_deg"].is_null() != with_arrow);
    CHECK(json["move"]["forward_mm"].get<double>() == Approx(today.back.forward_mm).margin(0.0005));
    CHECK(json["move"]["right_mm"].get<double>() > 0);
    CHECK(json["pulse_off_mm"].get<double>() == Approx(today.check.pulse_off_mm).margin(0.0005));
    CHECK(json["toward_midline_mm"].get<double>() == Approx(-today.check.outward_mm).margin(0.0005));
  }
}
