#include "models/results/answers_file.h"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

#include "geometry/plan/solve.h"
#include "models/coils/coil_library.h"
#include "models/results/course_file.h"
#include "tests/support/heads.h"
#include "tests/support/json_schema.h"

using namespace scalpmark;
using namespace scalpmark::geometry;
using nlohmann::json;
using tests::JsonSchema;

namespace {

LoggedPulse at(int row, int column, int percent, SeenAnswer answer) {
  return {GridPosition{row, column}, percent, answer, {}, {}};
}

json written(const Plan& plan, const Case& the_case, std::size_t visit) {
  const std::string text =
      models::answers_json(visit_answers(plan, the_case, *the_case.visits[visit - 1]), the_case, visit);
  CAPTURE(text);
  CHECK(JsonSchema("answers.schema.json").objection(text).empty());
  return json::parse(text);
}

}  // namespace

TEST_CASE("answers are written as their schema says, with null for what the pulses do not say") {
  const Head head = tests::sphere_head(90, 5);
  Case the_case;
  the_case.coil.model = models::coil("figure-8-70");
  the_case.hotspot = {0, 1};
  const Plan plan = solve(head, the_case, TapeDistances::left_out);
  using enum SeenAnswer;
  Visit full, silent, empty, all;
  full.date = silent.date = empty.date = all.date = {2026, 11, 26};
  full.pulses = {at(0, 0, 60, none), at(0, 1, 60, thumb), at(0, 1, 60, thumb), at(0, 1, 60, none),
                 at(0, 1, 55, none)};
  silent.pulses = {at(0, 1, 60, other), at(0, 1, 60, none)};
  all.pulses = {at(0, 1, 60, thumb)};
  the_case.visits = {full, silent, empty, all};

  json out = written(plan, the_case, 1);
  CHECK(out["visit"] == 1);
  CHECK(out["date"] == "2026-11-26");
  CHECK(out["counted"] == "both");
  CHECK(out["output_percent"] == 60);
  CHECK(out["spots"].size() == 9);
  CHECK(out["best"]["spot"] == json({0, 1}));
  CHECK(out["centre"]["se_forward_mm"].is_number());
  CHECK(out["threshold"]["spot"] == json({0, 1}));
  CHECK(out["threshold"]["counting"]["rule"] == "5_of_10");
  CHECK(out["threshold"]["counting"]["state"] == "open");
  CHECK(out["threshold"]["counting"]["outputs"].size() == 2);
  CHECK(out["threshold"]["estimate"]["low"] < out["threshold"]["estimate"]["mean"]);
  CHECK(out["threshold"]["estimate_bound"].is_null());

  out = written(plan, the_case, 2);
  CHECK(out["best"].is_null());
  CHECK(out["centre"].is_null());
  CHECK(out["threshold"]["estimate"].is_null());
  CHECK(out["threshold"]["estimate_bound"] == "above");

  out = written(plan, the_case, 3);
  CHECK(out["output_percent"].is_null());
  CHECK(out["spots"].empty());
  CHECK(out["threshold"].is_null());

  CHECK(written(plan, the_case, 4)["threshold"]["estimate_bound"] == "below");
}

TEST_CASE("a course is a table with a row a visit, empty where the marks are not known") {
  Visit first, second;
  first.date = {2026, 11, 26};
  first.by = "R,L";
  second.date = {2026, 11, 27};
  Course course;
  course.offsets = {VisitOffset{5.04, -4, 3.06, -0.04}, std::nullopt};
  course.outside = {true, false};
  CHECK(models::course_csv(course, {first, second}) ==
        "date,by,pulse_off_mm,forward_mm,toward_midline_mm,angle_off_deg,outside_limits\r\n"
        "2026-11-26,\"R,L\",5.0,-4.0,3.1,0.0,yes\r\n"
        "2026-11-27,,,,,,\r\n");
  first.by = "=1";
  CHECK(models::course_csv(course, {first, second}).find(",'=1,5.0,-4.0,") != std::string::npos);
}
