#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

#include "models/cases/case_file.h"
#include "models/files/error.h"
#include "tests/support/json_schema.h"
#include "tests/support/sentence.h"

using namespace scalpmark;
using namespace scalpmark::geometry;
using models::ModelError;
using tests::is_sentence;
using tests::JsonSchema;
using tests::sentence_of;

namespace {

std::string with_visits(const std::string& visits, int version = 2) {
  return R"({"format": "scalpmark-case", "version": )" + std::to_string(version) +
         R"(, "head": {"kind": "generic"}, "visits": )" + visits + "}";
}

/// One visit with this beside its date.
std::string one_visit(const std::string& more) {
  return with_visits(R"([{"date": "2026-11-26", )" + more + "}]");
}

std::string one_pulse(const std::string& pulse) {
  return one_visit(R"("pulses": [{"spot": [0, 0], "output_percent": 50, "answer": "none"}, {)" + pulse +
                   "}]");
}

models::CaseFile parse(const std::string& json) {
  return models::parse_case(json, "/somewhere", "bench.json");
}

std::string visits_refusal(const std::string& json) {
  return sentence_of<ModelError>([&] { (void)parse(json); });
}

}  // namespace

TEST_CASE("visits are read as entered and written so that they read the same") {
  const models::CaseFile read =
      parse(R"({"format": "scalpmark-case", "version": 2, "head": {"kind": "generic"},
    "answers": {"counted": "thumb", "rule": "4_of_8", "step_percent": 4, "fine_percent": 2},
    "visits": [
      {"date": "2026-11-26", "by": "RL", "threshold_percent": 46, "remarks": "hair wet",
       "pulses": [{"spot": [1, -1], "output_percent": 50, "answer": "thumb", "at": "10:32:05"},
                  {"site": "treatment", "output_percent": 100, "answer": "other", "corrected_from": "none"}],
       "site_tape_mm": {"vertex": 83.1, "right_tragus": 228}, "edge_tape_mm": {"nasion": 70, "left_tragus": 160.5},
       "brim_mm": {"nasion": 20, "inion": 31.5}, "marked_anew": true},
      {"date": "2026-11-26"}]})");
  CHECK(read.notes.empty());  // two on one day are nothing to remark on
  CHECK(read.the_case.answers == AnswerSettings{CountedAnswers::thumb, CountingBy::four_of_eight, 4, 2});
  REQUIRE(read.the_case.visits.size() == 2);
  const Visit& visit = *read.the_case.visits[0];
  CHECK(visit.date == Date{2026, 11, 26});
  CHECK(visit.by == "RL");
  CHECK(visit.threshold_percent == 46);
  CHECK(visit.remarks == "hair wet");
  CHECK(visit.marked_anew);
  REQUIRE(visit.pulses.size() == 2);
  CHECK(visit.pulses[0] == LoggedPulse{GridPosition{1, -1}, 50, SeenAnswer::thumb, TimeOfDay{10, 32, 5}, {}});
  CHECK(visit.pulses[1] == LoggedPulse{{}, 100, SeenAnswer::other, {}, SeenAnswer::none});
  CHECK(visit.site_tape == TapeReadings{83.1, {}, {}, 228.0});
  CHECK(visit.edge_tape == TapeReadings{{}, 70.0, 160.5, {}});
  CHECK(visit.brim == BrimHeights{20.0, {}, {}, 31.5});
  CHECK(*read.the_case.visits[1] == Visit{Date{2026, 11, 26}, {}, {}, {}, {}, {}, {}, false, {}});

  const std::string written = models::case_json(read);
  CHECK(JsonSchema("case.schema.json").objection(written).empty());
  CHECK(parse(written).the_case == read.the_case);
  // A pulse reads as one line.
  CHECK(written.find(R"({"spot": [1, -1], "output_percent": 50, "answer": "thumb", "at": "10:32:05"})") !=
        std::string::npos);
  // Nothing that nobody entered.
  const auto second = nlohmann::json::parse(written)["visits"][1];
  CHECK(second.size() == 1);
}

TEST_CASE("a case without visits says nothing of them") {
  CHECK(models::case_json(models::default_case()).find("visits") == std::string::npos);
}

TEST_CASE("dates out of order are kept as entered, and that is said") {
  const models::CaseFile read =
      parse(with_visits(R"([{"date": "2026-11-26"}, {"date": "2026-11-20"}, {"date": "2026-11-27"}])"));
  CHECK(read.the_case.visits[1]->date == Date{2026, 11, 20});
  REQUIRE(read.notes.size() == 1);
  CHECK_THAT(english(read.notes.front()), Catch::Contains("Visit 2 (2026-11-20)"));
}

TEST_CASE("visits that are not right are refused by reader and schema alike") {
  struct Bad {
    std::string json, said;
  };
  const JsonSchema schema("case.schema.json");
  REQUIRE(schema.objection(one_visit(R"("by": "")")).empty());
  for (const Bad& bad : std::vector<Bad>{
           {with_visits("[]", 1), "\"visits\" is not a key known here"},
           {with_visits("{}"), "visits must be a list"},
           {with_visits("[1]"), "visits[0] must be a group"},
           {with_visits("[{}]"), "visits[0].date is missing"},
           {with_visits(R"([{"date": 20261126}])"), "visits[0].date must be text"},
           {with_visits(R"([{"date": "26.11.2026"}])"), "visits[0].date must be a date such as 2026-11-26"},
           {with_visits(R"([{"date": "2026-13-01"}])"), "must be a date"},
           {one_visit(R"("patient": "x")"), "visits[0].\"patient\" is not a key known here"},
           {one_visit(R"("by": "more than twenty characters")"), "by must be at most 20 characters"},
           {one_visit(R"("threshold_percent": 0)"), "threshold_percent must be a whole number from 1 to 100"},
           {one_visit(R"("threshold_percent": 46.5)"), "threshold_percent must be a whole number"},
           {one_visit(R"("threshold_percent": 101)"), "threshold_percent must be a whole number"},
           {one_visit(R"("marked_anew": 1)"), "marked_anew must be true or false"},
           {one_visit(R"("remarks": ["a"])"), "remarks must be text"},
           {one_visit(R"("pulses": {})"), "visits[0].pulses must be a list"},
           {one_visit(R"("site_tape_mm": {"vertex": 83})"),
            "site_tape_mm must have 2 or more lengths, but has 1"},
           {one_visit(R"("site_tape_mm": {})"), "site_tape_mm must have 2 or more"},
           {one_visit(R"("edge_tape_mm": {"vertex": 83, "inion": 90})"), "\"inion\" is not a key known here"},
           {one_visit(R"("edge_tape_mm": {"vertex": 83, "nasion": 451})"),
            "nasion must be a number from 1 to 450"},
           {one_visit(R"("edge_tape_mm": {"vertex": 83, "nasion": null})"), "nasion must be a number"},
           {one_visit(R"("brim_mm": {})"), "brim_mm must have 1 or more"},
           {one_visit(R"("brim_mm": {"vertex": 20})"), "\"vertex\" is not a key known here"},
           {one_visit(R"("brim_mm": {"nasion": 200.5})"), "nasion must be a number from 0 to 200"},
           {one_pulse(R"("output_percent": 50, "answer": "none")"), "pulses[1].spot must be given"},
           {one_pulse(R"("spot": [0, 0], "site": "treatment", "output_percent": 50, "answer": "none")"),
            "pulses[1].site must not be given together with spot"},
           {one_pulse(R"("site": "start", "output_percent": 50, "answer": "none")"),
            "site must be treatment"},
           {one_pulse(R"("spot": [0, 0], "answer": "none")"), "output_percent is missing"},
           {one_pulse(R"("spot": [0, 0], "output_percent": 50)"), "answer is missing"},
           {one_pulse(R"("spot": [0, 2], "output_percent": 50, "answer": "none")"),
            "spot must be two whole numbers from -1 to 1"},
           {one_pulse(R"("spot": [0, 0.5], "output_percent": 50, "answer": "none")"),
            "spot must be two whole"},
           {one_pulse(R"("spot": [0], "output_percent": 50, "answer": "none")"), "spot must be two whole"},
           {one_pulse(R"("spot": 0, "output_percent": 50, "answer": "none")"), "spot must be two whole"},
           {one_pulse(R"("spot": [0, 0], "output_percent": 0, "answer": "none")"),
            "output_percent must be a whole number from 1 to 100, but is 0"},
           {one_pulse(R"("spot": [0, 0], "output_percent": 101, "answer": "none")"),
            "output_percent must be"},
           {one_pulse(R"("spot": [0, 0], "output_percent": 50.5, "answer": "none")"),
            "output_percent must be"},
           {one_pulse(R"("spot": [0, 0], "output_percent": 50, "answer": "toe")"),
            "answer must be none, thumb, index or other"},
           {one_pulse(R"("spot": [0, 0], "output_percent": 50, "answer": "none", "corrected_from": true)"),
            "corrected_from must be none"},
           {one_pulse(R"("spot": [0, 0], "output_percent": 50, "answer": "none", "at": "10:32")"),
            "at must be a time of day"},
           {one_pulse(R"("spot": [0, 0], "output_percent": 50, "answer": "none", "at": "25:00:00")"),
            "at must be a time of day"},
       }) {
    const std::string said = visits_refusal(bad.json);
    CAPTURE(bad.json, said);
    CHECK(is_sentence(said));
    CHECK(said.rfind("bench.json", 0) == 0);
    CHECK(said.find(bad.said) != std::string::npos);
    CHECK_FALSE(schema.objection(bad.json).empty());
  }
  // What a schema cannot say.
  CHECK(visits_refusal(with_visits(R"([{"date": "2026-02-29"}])")).find("must be a date") !=
        std::string::npos);
  const std::string steps =
      R"({"format": "scalpmark-case", "version": 2, "head": {"kind": "generic"}, "answers": {"fine_percent": 6}})";
  CHECK(visits_refusal(steps).find(
            "answers.fine_percent makes the fine step (6) larger than the other (5)") != std::string::npos);
}

TEST_CASE("more visits or pulses than any course has are refused, and so is depth") {
  std::string many = R"([{"date": "2026-11-26"})";
  for (std::size_t i = 0; i < most_visits; ++i) many += R"(, {"date": "2026-11-26"})";
  CHECK(visits_refusal(with_visits(many + "]")).find("visits has more than 400 visits") != std::string::npos);
  std::string pulses;
  for (std::size_t i = 0; i <= most_pulses; ++i)
    pulses += std::string(i == 0 ? "" : ", ") + R"({"spot": [0, 0], "output_percent": 50, "answer": "none"})";
  CHECK(visits_refusal(one_visit("\"pulses\": [" + pulses + "]")).find("more than 1000 pulses") !=
        std::string::npos);
}

TEST_CASE("copies of a case share its visits until one of them is changed") {
  models::CaseFile one = parse(one_visit(R"("by": "RL")"));
  models::CaseFile two = one;
  CHECK(&*one.the_case.visits[0] == &*two.the_case.visits[0]);
  Visit changed = *two.the_case.visits[0];
  changed.by = "KM";
  two.the_case.visits[0] = changed;
  CHECK(one.the_case.visits[0]->by == "RL");
  CHECK_FALSE(one == two);
}
