#include "models/cases/visits_csv.h"

#include <catch2/catch.hpp>

#include "models/files/error.h"
#include "tests/support/sentence.h"

using namespace scalpmark;
using namespace scalpmark::geometry;
using models::NamedTable;
using models::with_tables;
using tests::is_sentence;
using tests::sentence_of;

namespace {

Visits two_visits() {
  Visit first;
  first.date = {2026, 11, 26};
  first.by = "RL";
  first.threshold_percent = 46;
  first.site_tape = {83.1, {}, {}, 228.0};
  first.edge_tape = {{}, 70.0, 160.5, {}};
  first.brim = {20.0, {}, {}, 31.5};
  first.marked_anew = true;
  first.remarks = "hair wet, \"early\"\nsecond line";
  first.pulses = {{GridPosition{1, -1}, 50, SeenAnswer::thumb, TimeOfDay{10, 32, 5}, {}},
                  {{}, 100, SeenAnswer::other, {}, SeenAnswer::none}};
  Visit second;
  second.date = {2026, 11, 26};
  return {first, second};
}

const std::string visits_head = "visit,date,by\n",
                  pulses_head = "visit,spot_row,spot_column,output_percent,answer\n";

std::string refusal(const std::string& visits, const std::string& pulses) {
  const NamedTable v{visits, "visits.csv"}, p{pulses, "pulses.csv"};
  return sentence_of<models::ModelError>(
      [&] { (void)with_tables(two_visits(), visits.empty() ? nullptr : &v, pulses.empty() ? nullptr : &p); });
}

}  // namespace

TEST_CASE("visits and pulses written as tables read the same") {
  const Visits visits = two_visits();
  const NamedTable v{models::visits_csv(visits), "visits.csv"}, p{models::pulses_csv(visits), "pulses.csv"};
  CHECK(v.text.rfind("visit,date,by,threshold_percent,site_vertex_mm,", 0) == 0);
  CHECK(p.text ==
        "visit,at,spot_row,spot_column,output_percent,answer,corrected_from\r\n"
        "1,10:32:05,1,-1,50,thumb,\r\n"
        "1,,,,100,other,none\r\n");
  CHECK(with_tables({}, &v, &p) == visits);
  // After those that are there, with their own numbers.
  const Visits more = with_tables(visits, &v, &p);
  REQUIRE(more.size() == 4);
  CHECK(more[2] == visits[0]);
  CHECK(more[0] == visits[0]);
}

TEST_CASE("initials and remarks of visits are no formulas in a table, and read back as they were") {
  Visit visit;
  visit.date = {2026, 11, 26};
  visit.by = "=A1+B1";
  visit.remarks = "- slept badly\n+ coffee;@home";
  const NamedTable v{models::visits_csv({visit}), "visits.csv"};
  CHECK(v.text.find(",'=A1+B1,") != std::string::npos);
  CHECK(v.text.find("\"'- slept badly\n'+ coffee;'@home\"") != std::string::npos);
  CHECK(with_tables({}, &v, nullptr) == Visits{visit});
}

TEST_CASE("pulses alone go to the case's own visits, columns in any order") {
  const NamedTable p{"answer,output_percent,visit,spot_column,spot_row\r\nthumb,55,2,1,0\r\nnone,55,1,,\r\n",
                     "p"};
  const Visits more = with_tables(two_visits(), nullptr, &p);
  REQUIRE(more[1]->pulses.size() == 1);
  CHECK(more[1]->pulses[0] == LoggedPulse{GridPosition{0, 1}, 55, SeenAnswer::thumb, {}, {}});
  CHECK(more[0]->pulses.size() == 3);
  CHECK_FALSE(more[0]->pulses[2].spot);
}

TEST_CASE("a bad row is named by its line, and nothing of its table is taken") {
  struct Bad {
    std::string visits, pulses, said;
  };
  for (const Bad& bad : std::vector<Bad>{
           {"date,by\n2026-11-26,RL\n", "", "visits.csv, line 1: the column visit is missing"},
           {"visit,by\n1,RL\n", "", "visits.csv, line 1: the column date is missing"},
           {"visit,date,name\n1,2026-11-26,X\n", "",
            "visits.csv, line 1: \"name\" is not a column known here"},
           {"visit,date,\"two\nlines\"\n1,2026-11-26,X\n", "",
            "visits.csv, line 1: \"two\\nlines\" is not a column known here"},
           {"visit,date," + std::string(4000, 'n') + "\n1,2026-11-26,X\n", "",
            "visits.csv, line 1: \"" + std::string(40, 'n') + "...\" is not a column known here"},
           {visits_head + "1,2026-11-26,RL\n2,26.11.2026,RL\n", "",
            "visits.csv, line 3: date must be a date"},
           {visits_head + "1,,RL\n", "", "visits.csv, line 2: date is missing"},
           {visits_head + ",2026-11-26,RL\n", "", "visits.csv, line 2: visit is missing"},
           {visits_head + "first,2026-11-26,RL\n", "", "visits.csv, line 2: visit must be a whole number"},
           {visits_head + std::string(4000, '1') + ",2026-11-26,RL\n", "",
            "visits.csv, line 2: visit must be a whole number from 1, but is \"" + std::string(40, '1') +
                "...\";"},
           {visits_head + "\"1\r\n\",2026-11-26,RL\n", "",
            "visits.csv, line 2: visit must be a whole number from 1, but is \"1\\r\\n\";"},
           {visits_head + "1.5,2026-11-26,RL\n", "", "visits.csv, line 2: visit must be a whole number"},
           {visits_head + "1,2026-11-26,RL\n1,2026-11-27,RL\n", "",
            "visits.csv, line 3: visit 1 is there twice"},
           {"visit,date,site_vertex_mm,site_nasion_mm\n1,2026-11-26,\"83,1\",113\n", "",
            "visits.csv, line 2: site_tape_mm.vertex must be a number from 1 to 450"},
           {"visit,date,site_vertex_mm\n1,2026-11-26,83\n", "",
            "visits.csv, line 2: site_tape_mm must have 2"},
           {"visit,date,threshold_percent\n1,2026-11-26,46.5\n", "",
            "line 2: threshold_percent must be a whole"},
           {"visit,date,marked_anew\n1,2026-11-26,maybe\n", "", "line 2: marked_anew must be true or false"},
           {"", pulses_head + "1,0,0,50,none\n1,0,0,500,none\n",
            "pulses.csv, line 3: output_percent must be"},
           {"", pulses_head + "1,0,,50,none\n", "pulses.csv, line 2: spot must be two whole numbers"},
           {"", pulses_head + "1,0,5,50,none\n", "pulses.csv, line 2: spot must be two whole numbers"},
           {"", pulses_head + "1,0,0,50,toe\n", "pulses.csv, line 2: answer must be none, thumb"},
           {"", pulses_head + "1,0,0,,none\n", "pulses.csv, line 2: output_percent is missing"},
           {"", pulses_head + "3,0,0,50,none\n", "pulses.csv, line 2: there is no visit 3"},
           {visits_head + "7,2026-11-27,RL\n", pulses_head + "1,0,0,50,none\n",
            "pulses.csv, line 2: there is no visit 1"},
           {"", "visit,answer\n1,none\n", "pulses.csv, line 1: the column output_percent is missing"}}) {
    const std::string said = refusal(bad.visits, bad.pulses);
    CAPTURE(bad.visits, bad.pulses, said);
    CHECK(is_sentence(said));
    CHECK(said.find(bad.said) != std::string::npos);
  }
}

TEST_CASE("more visits or pulses than any course has are refused with the line") {
  std::string visits = visits_head, pulses = pulses_head;
  for (std::size_t i = 1; i <= most_visits + 1; ++i) visits += std::to_string(i) + ",2026-11-26,RL\n";
  for (std::size_t i = 0; i <= most_pulses; ++i) pulses += "2,0,0,50,none\n";
  CHECK(refusal(visits, "").find("visits.csv, line 400: there are more than 400 visits") !=
        std::string::npos);
  CHECK(refusal("", pulses).find("pulses.csv, line 1002: there are more than 1000 pulses") !=
        std::string::npos);
}
