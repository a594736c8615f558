#include "models/results/plan_file.h"

#include <catch2/catch.hpp>
#include <limits>
#include <nlohmann/json.hpp>

#include "geometry/base/message.h"
#include "geometry/plan/solve.h"
#include "models/coils/coil_library.h"
#include "models/files/error.h"
#include "models/files/made_by.h"
#include "tests/support/heads.h"
#include "tests/support/json_schema.h"
#include "tests/support/sentence.h"
#include "tests/support/temporary_folder.h"

using namespace scalpmark;
using nlohmann::ordered_json;
using tests::JsonSchema;
using tests::TemporaryFolder;

namespace {

geometry::Plan solved() {
  static const geometry::Plan plan = [] {
    geometry::Case the_case;
    the_case.coil.model = models::coil("figure-8-70");
    geometry::use_one_rule(the_case, geometry::MarkRule::tape);
    return geometry::solve(tests::sphere_head(90, 5), the_case);
  }();
  return plan;
}

std::vector<std::string> keys(const ordered_json& group) {
  std::vector<std::string> names;
  for (const auto& [name, value] : group.items()) names.push_back(name);
  return names;
}

using Names = std::vector<std::string>;

}  // namespace

TEST_CASE("a plan of a solved case is valid by its schema and says what the plan says") {
  const geometry::Plan plan = solved();
  const std::string text = models::plan_json(plan);
  CHECK(JsonSchema("plan.schema.json").objection(text).empty());
  const auto json = ordered_json::parse(text);
  CHECK(keys(json) == Names{"format", "version", "made_by", "tape_mm", "landmarks", "search", "hotspot",
                            "treatment", "treatment_alternatives", "warnings"});
  CHECK(json["format"] == "scalpmark-plan");
  CHECK(json["version"] == 1);
  CHECK(json["made_by"] == models::made_by());
  CHECK(json["tape_mm"]["nasion_inion"].get<double>() == Approx(plan.tapes.nasion_inion_mm).margin(0.0005));
  REQUIRE(json["landmarks"].size() == plan.landmarks.size());
  std::size_t i = 0;
  for (const auto& [name, at] : json["landmarks"].items()) {
    CHECK(name == plan.landmarks[i].name);
    for (int k = 0; k < 3; ++k)
      CHECK(at[static_cast<std::size_t>(k)].get<double>() == Approx(plan.landmarks[i].at[k]).margin(0.0005));
    ++i;
  }
  REQUIRE(json["search"]["grid"].size() == 9);
  for (std::size_t n = 0; n < 9; ++n) {
    CHECK(json["search"]["grid"][n]["row"] == plan.grid[n].row);
    CHECK(json["search"]["grid"][n]["column"] == plan.grid[n].column);
  }
  const auto& start = json["search"]["start"];
  CHECK(keys(start) == Names{"wanted", "pulse", "wanted_to_pulse_mm", "tape_to_draw_mm", "normal", "front",
                             "angle_deg", "lift_mm", "edge", "edge_mark", "mark", "gap_mm", "tape_from_mm"});
  CHECK(keys(start["edge_mark"]) == Names{"tape", "drop", "nearest"});
  CHECK(keys(start["gap_mm"]) == Names{"drop", "nearest"});
  CHECK(keys(start["tape_from_mm"]) == Names{"pulse", "edge_mark"});
  CHECK(keys(start["tape_from_mm"]["pulse"]) == Names{"vertex", "nasion", "left_tragus", "right_tragus"});
  CHECK(start["tape_from_mm"]["edge_mark"]["left_tragus"].get<double>() ==
        Approx(plan.start.edge_mark_tape->left_tragus_mm).margin(0.0005));
  CHECK(start["angle_deg"] == 45);
  REQUIRE(json["treatment_alternatives"].size() == plan.treatment_alternatives.size());
  for (std::size_t n = 0; n < plan.treatment_alternatives.size(); ++n) {
    const auto& item = json["treatment_alternatives"][n];
    const auto& other = plan.treatment_alternatives[n];
    if (other.rule == geometry::TreatmentRule::forward) {
      CHECK(item["distance_mm"].get<double>() == Approx(other.distance_mm));
      CHECK_FALSE(item.contains("label"));
    } else {
      CHECK(item["label"] == other.label);
      CHECK_FALSE(item.contains("distance_mm"));
    }
  }
}

TEST_CASE("a mark that falls off the head is null, and so are its gap and its tapes") {
  geometry::Plan plan = solved();
  plan.treatment.edge_mark = {};
  plan.treatment.drop_gap_mm.reset();
  plan.treatment.edge_mark_tape.reset();
  plan.warnings = {geometry::Message::of("The edge mark falls off the head.")};
  const std::string text = models::plan_json(plan);
  CHECK(JsonSchema("plan.schema.json").objection(text).empty());
  const auto treatment = ordered_json::parse(text)["treatment"];
  for (const char* rule : {"tape", "drop", "nearest"}) CHECK(treatment["edge_mark"][rule].is_null());
  CHECK(treatment["gap_mm"]["drop"].is_null());
  CHECK(treatment["gap_mm"]["nearest"].is_number());
  CHECK(treatment["tape_from_mm"]["edge_mark"].is_null());
  CHECK(treatment["tape_from_mm"]["pulse"].is_object());
  CHECK(ordered_json::parse(text)["warnings"][0] == english(plan.warnings[0]));
}

TEST_CASE("what lies under the coil is written with its caution, and the plan stays valid by its schema") {
  geometry::Plan plan = solved();
  CHECK_FALSE(ordered_json::parse(models::plan_json(plan))["treatment"].contains("cortex"));
  plan.treatment.cortex = geometry::CortexHit{16.54321,
                                              {-38, 44, 34},
                                              {{"Brodmann area 46", 0.77}, {"Brodmann area 9", 0.23}},
                                              {{"left middle frontal gyrus", 1}},
                                              15.1,
                                              17.25};
  const std::string text = models::plan_json(plan);
  CHECK(JsonSchema("plan.schema.json").objection(text).empty());
  const auto cortex = ordered_json::parse(text)["treatment"]["cortex"];
  CHECK(keys(cortex) == Names{"depth_mm", "nearest_mm", "median_mm", "point", "areas", "gyri", "note"});
  CHECK(cortex["depth_mm"] == 16.543);
  CHECK(cortex["nearest_mm"] == 15.1);
  CHECK(cortex["median_mm"] == 17.25);
  CHECK(cortex["areas"][1]["name"] == "Brodmann area 9");
  CHECK(cortex["gyri"][0]["share"] == 1);
  CHECK(cortex["note"] == "on the template; a person's own brain differs");
}

TEST_CASE("lengths are written to a thousandth, directions to a millionth, and zero has no sign") {
  geometry::Plan plan = solved();
  plan.tapes.nasion_inion_mm = 361.23456;
  plan.hotspot.pulse = {-0.0, -0.0004, 12.3456789};
  plan.hotspot.normal = {-1e-9, 0.123456789, -0.5};
  const std::string text = models::plan_json(plan);
  CHECK(text.find("\"nasion_inion\": 361.235,") != std::string::npos);
  CHECK(text.find("\"pulse\": [0, 0, 12.346],") != std::string::npos);
  CHECK(text.find("\"normal\": [0, 0.123457, -0.5],") != std::string::npos);
  CHECK(text.find("-0,") == std::string::npos);
  CHECK(text.find("-0.0") == std::string::npos);
}

TEST_CASE("a plan with a number that is not finite is not written") {
  geometry::Plan plan = solved();
  plan.hotspot.pulse_tape->vertex_mm = std::numeric_limits<double>::infinity();
  const TemporaryFolder folder;
  const auto file = tests::write_bytes(folder / "plan.json", "old");
  CHECK(tests::is_sentence(tests::sentence_of<models::ModelError>([&] { models::write_plan(file, plan); })));
  CHECK(tests::read_bytes(file) == "old");
  CHECK(folder.count() == 1);
  models::write_plan(file, solved());
  CHECK(tests::read_bytes(file) == models::plan_json(solved()));
}
