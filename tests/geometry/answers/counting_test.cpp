#include "geometry/answers/counting.h"

#include <catch2/catch.hpp>
#include <string>

#include "geometry/base/error.h"
#include "tests/support/sentence.h"

using namespace scalpmark::geometry;
using namespace scalpmark::tests;

namespace {

/// "+" answered, "-" not.
void pulse_at(std::vector<Pulse>& log, int output, const std::string& answers) {
  for (const char answer : answers) log.push_back({output, answer == '+'});
}

std::vector<Pulse> log_of(const std::vector<std::pair<int, std::string>>& outputs) {
  std::vector<Pulse> log;
  for (const auto& [output, answers] : outputs) pulse_at(log, output, answers);
  return log;
}

/// Follows what is offered with a muscle that answers exactly from `threshold` on.
Counting followed(int threshold, const CountingRule& rule = five_of_ten, const CountingSteps& steps = {}) {
  std::vector<Pulse> log;
  Counting counting = count_threshold(log, rule, steps);
  while (counting.next_percent) {
    REQUIRE(log.size() < 500);
    log.push_back({*counting.next_percent, *counting.next_percent >= threshold});
    counting = count_threshold(log, rule, steps);
  }
  return counting;
}

}  // namespace

TEST_CASE("an output's count is open until the rule is met or can no longer be") {
  const auto verdict = [](const std::string& answers, CountingRule rule) {
    return count_threshold(log_of({{50, answers}}), rule).outputs.at(0).verdict;
  };
  CHECK(verdict("++++-----", five_of_ten) == CountVerdict::open);
  CHECK(verdict("++++-----+", five_of_ten) == CountVerdict::met);
  CHECK(verdict("++++------", five_of_ten) == CountVerdict::failed);
  CHECK(verdict("+++++", five_of_ten) == CountVerdict::met);
  CHECK(verdict("-----", five_of_ten) == CountVerdict::open);
  CHECK(verdict("------", five_of_ten) == CountVerdict::failed);
  CHECK(verdict("----", four_of_eight) == CountVerdict::open);
  CHECK(verdict("-----", four_of_eight) == CountVerdict::failed);
  CHECK(verdict("++++", four_of_eight) == CountVerdict::met);
}

TEST_CASE("nobody chooses the best ten: pulses beyond the rule's count for nothing") {
  const auto counting = count_threshold(log_of({{50, "++++------+++"}}));
  CHECK(counting.outputs.at(0) == CountAtOutput{50, 10, 4, 3, CountVerdict::failed});
  CHECK(counting.pulses == 13);
  CHECK(counting.next_percent == 55);
}

TEST_CASE("what to try next goes by the step far from the threshold and by one near it") {
  const auto next = [](const std::vector<std::pair<int, std::string>>& outputs) {
    return count_threshold(log_of(outputs)).next_percent;
  };
  const std::string yes = "+++++", no = "------";
  CHECK(next({}) == 50);
  CHECK(next({{50, "+"}}) == 50);                       // begun: to its end
  CHECK(next({{50, yes}}) == 45);                       // down by the step
  CHECK(next({{50, no}}) == 55);                        // up by the step
  CHECK(next({{50, yes}, {45, no}}) == 49);             // near: down by one
  CHECK(next({{50, yes}, {45, no}, {49, yes}}) == 48);  //
  CHECK(next({{50, yes}, {45, no}, {49, yes}, {48, "-"}}) == 48);
  CHECK(next({{60, yes}, {45, no}}) == 55);            // a jump of more than a step: by the step again
  CHECK(next({{50, yes}, {45, no}, {55, no}}) == 49);  // a failed output above is left aside
  CHECK(next({{98, no}}) == 100);
  CHECK(next({{3, yes}}) == 1);
  CHECK(next({{50, "++"}, {55, yes}}) == 50);  // begun and left: counted on
}

TEST_CASE("the threshold is the lowest output that met the rule above one that failed") {
  const auto counting =
      count_threshold(log_of({{50, "+++++"}, {45, "------"}, {49, "-+-+-+-++"}, {48, "-+-+-+-+--"}}));
  CHECK(counting.state == CountingState::found);
  CHECK(counting.threshold_percent == 49);
  CHECK(counting.pulses == 30);
  CHECK_FALSE(counting.next_percent);
  CHECK(counting.outputs.front().output_percent == 45);
  CHECK(counting.outputs.back().output_percent == 50);
}

TEST_CASE("what is offered leads to any threshold there is") {
  for (int threshold = 2; threshold <= 100; ++threshold) {
    CAPTURE(threshold);
    const auto counting = followed(threshold);
    CHECK(counting.state == CountingState::found);
    CHECK(counting.threshold_percent == threshold);
  }
  CHECK(followed(47).pulses == 6 + 5 + 5 + 5 + 5 + 6);  // 45, 50, 49, 48, 47, 46
  CHECK(followed(47, four_of_eight).pulses == 5 + 4 + 4 + 4 + 4 + 5);
  CHECK(followed(47, five_of_ten, {60, 10, 2}).threshold_percent == 48);
  CHECK(followed(1).state == CountingState::below);
  CHECK_FALSE(followed(1).threshold_percent);
  CHECK(followed(101).state == CountingState::above_all);
  CHECK_FALSE(followed(101).threshold_percent);
}

TEST_CASE("steps, rules and outputs that are none are refused in a sentence") {
  const auto said = [](CountingRule rule, CountingSteps steps, int output) {
    return sentence_of<GeometryError>([&] { (void)count_threshold({{output, true}}, rule, steps); });
  };
  CHECK(
      said(five_of_ten, {50, 5, 6}, 50) ==
      "Steps of 5 % and, near the threshold, 6 % cannot be taken; they are from 1 to 50 %, the second no larger "
      "than the first; correct them.");
  CHECK(is_sentence(said(five_of_ten, {50, 5, 0}, 50)));
  CHECK(is_sentence(said(five_of_ten, {50, 51, 1}, 50)));
  CHECK(is_sentence(said(five_of_ten, {0, 5, 1}, 50)));
  CHECK(is_sentence(said({11, 10}, {}, 50)));
  CHECK(is_sentence(said(five_of_ten, {}, 120)));
}
