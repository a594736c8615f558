#include "models/results/contact_file.h"

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

TEST_CASE("a contact's file is valid by its schema and says what the contact says, with every coil") {
  const geometry::Head head = tests::lopsided_head(5);
  for (const auto& coil : models::coils())
    for (const geometry::Tilt tilt : {geometry::Tilt{}, geometry::Tilt{8, -4}}) {
      geometry::Case the_case;
      the_case.coil.model = coil;
      geometry::use_one_rule(the_case, geometry::MarkRule::tape);
      the_case.coil.centre_to_edge_mm = coil.centre_to_edge_mm;
      the_case.coil.lift_mm = 3;
      const auto plan = geometry::solve(head, the_case, geometry::TapeDistances::left_out);
      const models::ContactAsked asked{"treatment",
                                       plan.treatment,
                                       {2, 8, tilt},
                                       geometry::FieldAskew{{{1, 2, 3}, {}}, 1.9, {}, 0.95},
                                       {geometry::Message::of("It rests on its %1.", "casing")}};
      const auto c = geometry::contact(head, the_case.coil, plan.treatment.pose(), asked.options);
      const std::string text = models::contact_json(c, the_case, asked);
      CHECK(JsonSchema("contact.schema.json").objection(text).empty());
      const auto json = ordered_json::parse(text);
      CHECK(json["coil"] == coil.model);
      CHECK(json["lift_mm"].get<double>() == Approx(c.lift_mm).margin(0.0005));
      CHECK(json["cap_mm"] == 2);
      CHECK(json["touches"].size() == c.touches.size());
      CHECK(json["gaps"].size() == c.map.size());
      REQUIRE(json["wings"].size() == c.wings.size());
      CHECK(json["wings"][0]["most_mm"].get<double>() == Approx(c.wings[0].most_mm).margin(0.0005));
      CHECK(json["askew"].is_null() == (tilt.roll_deg == 0));
      CHECK(json["sentences"] == ordered_json{"It rests on its casing."});
      if (tilt.roll_deg != 0) {
        CHECK(json["tilt"]["pitch_deg"] == -4);
        CHECK(json["askew"]["cortex"].is_null());  // this head has none
        CHECK(json["askew"]["field"]["moved_mm"] == 1.9);
        CHECK(json["askew"]["field"]["left"] == 0.95);
      }
    }
}
