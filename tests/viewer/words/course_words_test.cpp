#include "viewer/words/course_words.h"

#include <catch2/catch.hpp>

#include "tests/support/sentence.h"
#include "viewer/words/course_text.h"

using namespace scalpmark;
using namespace scalpmark::geometry;
using tests::is_sentence;

namespace {

Course course_by(const std::vector<Eigen::Vector2d>& places) {
  std::vector<std::optional<VisitOffset>> offsets;
  for (const auto& at : places) offsets.push_back(VisitOffset{at.norm(), at.x(), at.y(), 0});
  return course_of(offsets, std::vector(places.size(), false));
}

/// Eight visits about the site, then four elsewhere.
std::vector<Eigen::Vector2d> moved_by(const Eigen::Vector2d& by) {
  std::vector<Eigen::Vector2d> places{{1, 0}, {-1, 1}, {1, -1}, {0, 1}, {-1, -1}, {1, 1}, {0, 0}, {-1, 0}};
  for (const auto& off :
       {Eigen::Vector2d(0, 1), Eigen::Vector2d(1, 0), Eigen::Vector2d(-1, 0), Eigen::Vector2d(0, -1)})
    places.push_back(off + by);
  return places;
}

std::string drift_of(const Course& course) {
  return english(viewer::drift_sentence(course.stretches.at(0)));
}

}  // namespace

TEST_CASE("a drift is told by visits, way and size, with how often that is wrong") {
  const std::string behind = drift_of(course_by(moved_by({-5, 0})));
  CHECK(is_sentence(behind));
  CHECK(behind.rfind("The last 4 visits lie ", 0) == 0);
  CHECK(behind.find(" mm behind the first 8: a mark has crept, or the cap sits further back.") !=
        std::string::npos);
  CHECK(behind.find("chance alone would have this said of 1.") != std::string::npos);
  CHECK(drift_of(course_by(moved_by({6, 1}))).find("in front of the first 8") != std::string::npos);
  CHECK(drift_of(course_by(moved_by({1, 6}))).find("nearer the midline than the first 8") !=
        std::string::npos);
  CHECK(drift_of(course_by(moved_by({1, -6}))).find("further from the midline") != std::string::npos);
}

TEST_CASE("no drift, and too few visits for one, are said as such") {
  CHECK(drift_of(course_by(moved_by({0, 0}))) == "No drift shows in 12 visits.");
  CHECK(drift_of(course_by({{1, 0}, {0, 1}})) == "2 visits with known marks; a drift shows from 10 on.");
}

TEST_CASE("a course's text keeps to its width, and names what is outside and what is marked anew") {
  std::vector<std::optional<VisitOffset>> offsets;
  Visits visits;
  for (int i = 0; i < 12; ++i) {
    const double off = i == 11 ? 15 : 4 + i % 2;
    offsets.push_back(VisitOffset{off, off, 0, 0});
    Visit visit;
    visit.date = {2026, 11, 1 + i};
    visit.by = "RL";
    visits.emplace_back(visit);
  }
  offsets[3].reset();
  const Course course = course_of(offsets, std::vector(12, false));
  const std::string text = viewer::course_text(course, visits);
  CAPTURE(text);
  std::istringstream lines(text);
  for (std::string line; std::getline(lines, line);) CHECK(line.size() <= 80);
  CHECK(text.find("marks not known") != std::string::npos);
  CHECK(text.find("outside") != std::string::npos);
  CHECK(viewer::course_text({}, {}) == "This case has no visits yet.\n");
  std::vector<bool> anew(12, false);
  anew[5] = true;
  CHECK(viewer::course_text(course_of(offsets, anew), visits).find("Marked anew") != std::string::npos);
}
