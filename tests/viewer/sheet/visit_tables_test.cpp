#include "viewer/sheet/visit_tables.h"

#include <catch2/catch.hpp>

#include "geometry/plan/solve.h"
#include "models/coils/coil_library.h"
#include "tests/support/heads.h"

using namespace scalpmark;
using namespace scalpmark::geometry;

namespace {

Visit visit_on(int day) {
  Visit visit;
  visit.date = {2026, 11, day};
  return visit;
}

}  // namespace

TEST_CASE("the sheet lists the visits so far as entered, in tables that fit a page") {
  Visit full = visit_on(26);
  full.by = "RL";
  full.threshold_percent = 46;
  full.site_tape = {83.1, 113.0, {}, 228.0};
  full.marked_anew = true;
  full.remarks = "hair wet";
  Visits visits{full};
  for (int i = 0; i < 34; ++i) visits.emplace_back(visit_on(1 + i % 28));
  const auto tables = viewer::visits_tables(visits);
  REQUIRE(tables.size() == 2);
  CHECK(tables[0].rows.size() == 30);
  CHECK(tables[1].rows.size() == 5);
  CHECK(tables[0].rows[0] == std::vector<std::string>{"1", "2026-11-26", "RL", "46 %",
                                                      "8.3 / 11.3 / - / 22.8", "", "Marked anew. hair wet"});
  CHECK(tables[1].rows[0][0] == "31");
  for (const auto& table : tables)
    for (const auto& row : table.rows) CHECK(row.size() == table.columns.size());
  CHECK(viewer::visits_tables({}).empty());
}

TEST_CASE("the sheet tells spot and threshold of the last visit with pulses, with the caution of the eye") {
  const Head head = tests::sphere_head(90, 5);
  Case the_case;
  the_case.coil.model = models::coil("figure-8-70");
  const Plan plan = solve(head, the_case, TapeDistances::left_out);
  CHECK(viewer::answers_table(the_case, plan).rows.empty());
  Visit pulsed = visit_on(2);
  for (const SeenAnswer seen : {SeenAnswer::thumb, SeenAnswer::none, SeenAnswer::thumb})
    pulsed.pulses.push_back({GridPosition{0, 0}, 50, seen, {}, {}});
  pulsed.threshold_percent = 47;
  the_case.visits = {visit_on(1), pulsed, visit_on(3)};
  const auto table = viewer::answers_table(the_case, plan);
  CHECK(table.title.find("visit 2") != std::string::npos);
  CHECK(table.note.find("11.3 %") != std::string::npos);
  std::string all;
  for (const auto& row : table.rows) all += row[0] + ": " + row[1] + "\n";
  CAPTURE(all);
  CHECK(all.find("2 of 3 answered") != std::string::npos);
  CHECK(all.find("Counting 5 of 10 is open after 3 pulses") != std::string::npos);
  CHECK(all.find("Threshold written down: 47 %") != std::string::npos);
}
