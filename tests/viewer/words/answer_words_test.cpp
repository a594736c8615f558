#include "viewer/words/answer_words.h"

#include <catch2/catch.hpp>

#include "tests/support/sentence.h"

using namespace scalpmark;
using namespace scalpmark::geometry;
using tests::is_sentence;

namespace {

std::string said(const Message& message) {
  return english(message);
}

VisitAnswers mapped(const std::vector<ProbedSpot>& spots, const std::vector<GridPosition>& names) {
  VisitAnswers answers;
  answers.spots = names;
  answers.map = answer_map(spots);
  return answers;
}

}  // namespace

TEST_CASE("spots are named by their steps from the start, as everywhere") {
  CHECK(said(viewer::spot_name({0, 0})) == "the start");
  CHECK(said(viewer::spot_name({1, 0})) == "one step forward");
  CHECK(said(viewer::spot_name({0, -1})) == "one step toward the midline");
  CHECK(said(viewer::spot_name({-1, 1})) == "one step back, one step outward");
}

TEST_CASE("the best spot is told with its count and its chance, and never as sure") {
  const auto answers =
      mapped({{{0, 0}, {{60, false}, {60, false}}}, {{10, 0}, {{60, true}, {60, true}}}}, {{0, 0}, {1, 0}});
  const std::string best = said(viewer::best_sentence(answers));
  CHECK(is_sentence(best));
  // Beta(3,1) against Beta(1,3): 1 - B(4... in closed form 19/20: the chance that one of density 3x^2 is
  // above one of distribution 1 - (1 - x)^3 is the integral of 3x^2 (1 - (1 - x)^3) = 1 - 1/20.
  CHECK(best.find(
            "one step forward (2 of 2 answered); the chance that it is the best of the nine is 95 in 100") !=
        std::string::npos);
  const std::string centre = said(viewer::centre_sentence(answers));
  CHECK(centre.find("1.0 cm forward") != std::string::npos);
  CHECK(centre.find("pulled toward the middle of the grid") != std::string::npos);
  const auto silent = mapped({{{0, 0}, {{60, false}}}}, {{0, 0}});
  CHECK(said(viewer::best_sentence(silent)).find("Nothing answered on the grid at 60 %") !=
        std::string::npos);
  CHECK(viewer::centre_sentence(silent).empty());
  CHECK(is_sentence(said(viewer::best_sentence(VisitAnswers{}))));
}

TEST_CASE("the odds of five of ten are those of the exact binomial") {
  // 1 - P(X <= 4), n = 10, p = 0.4: 1 - 0.6331 (tables of the binomial distribution, e.g. Abramowitz and
  // Stegun's reference list, memory).
  CHECK(said(viewer::odds_sentence(five_of_ten)).find("still passes 5 of 10 in 37 of 100 tries") !=
        std::string::npos);
}

TEST_CASE("counting says where it stands and what to try next") {
  const std::vector<Pulse> pulses{{50, true}, {50, true}, {50, true}, {50, true}, {50, true}};
  const std::string met = said(viewer::counting_sentence(count_threshold(pulses), five_of_ten));
  CHECK(met == "Counting 5 of 10 is open after 5 pulses; next to try: 45 %.");
  CHECK(said(viewer::count_row(count_threshold(pulses).outputs[0])) == "50 %: 5 of 5, met");
}

TEST_CASE("all or none answered is told without a number") {
  const auto told = [](bool answered) {
    ThresholdAtSpot at{{0, 0}, {{50, answered}, {50, answered}}, {}, ThresholdBelief{}};
    at.belief.add(at.pulses);
    return said(viewer::estimate_sentence(at));
  };
  CHECK(told(true) ==
        "Estimate: all 2 pulses were answered; the threshold lies below, nobody knows by how much.");
  CHECK(told(false) ==
        "Estimate: none of 2 pulses was answered; the threshold lies above, nobody knows by how much.");
  CHECK(said(viewer::eye_caution()).find("11.3 %") != std::string::npos);
}
