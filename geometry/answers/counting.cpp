#include "geometry/answers/counting.h"

#include <algorithm>
#include <map>

#include "geometry/base/error.h"

namespace scalpmark::geometry {

namespace {

constexpr int lowest_output = static_cast<int>(ranges::output_percent.low);
constexpr int most_output = static_cast<int>(ranges::output_percent.high);

void check_steps(const CountingSteps& steps) {
  check_pulses({{steps.first_percent, false}});
  constexpr int most = 50;
  if (steps.fine_percent < 1 || steps.step_percent > most || steps.fine_percent > steps.step_percent)
    throw GeometryError(Message::of(
        "Steps of %1 % and, near the threshold, %2 % cannot be taken; they are from 1 to %3 %, the second no "
        "larger than the first; correct them.",
        steps.step_percent, steps.fine_percent, most));
}

CountVerdict verdict_of(int answers, int pulses, const CountingRule& rule) {
  if (answers >= rule.answers) return CountVerdict::met;
  const int missed = pulses - answers;
  return missed > rule.pulses - rule.answers ? CountVerdict::failed : CountVerdict::open;
}

std::vector<CountAtOutput> count(const std::vector<Pulse>& pulses, const CountingRule& rule) {
  std::map<int, CountAtOutput> counts;
  for (const Pulse& pulse : pulses) {
    CountAtOutput& here = counts[pulse.output_percent];
    here.output_percent = pulse.output_percent;
    if (here.pulses == rule.pulses) {
      ++here.beyond;
      continue;
    }
    ++here.pulses;
    if (pulse.answered) ++here.answers;
    here.verdict = verdict_of(here.answers, here.pulses, rule);
  }
  std::vector<CountAtOutput> outputs;
  for (const auto& [output, here] : counts) outputs.push_back(here);
  return outputs;
}

/// The lowest output that met the rule and the highest below it (or of all) that failed.
struct Bracket {
  std::optional<int> met, failed;
};

Bracket bracket_of(const std::vector<CountAtOutput>& outputs) {
  Bracket bracket;
  for (const CountAtOutput& here : outputs) {
    if (here.verdict == CountVerdict::met) {
      bracket.met = here.output_percent;
      break;
    }
    if (here.verdict == CountVerdict::failed) bracket.failed = here.output_percent;
  }
  return bracket;
}

/// Where a bracket leads; the state is open with the output to try next, or settled.
void settle(Counting& counting, const Bracket& bracket, const CountingSteps& steps) {
  if (!bracket.met && !bracket.failed) {
    counting.next_percent = steps.first_percent;
  } else if (!bracket.met) {
    if (*bracket.failed == most_output)
      counting.state = CountingState::above_all;
    else
      counting.next_percent = std::min(*bracket.failed + steps.step_percent, most_output);
  } else if (*bracket.met == lowest_output) {
    counting.state = CountingState::below;
  } else if (bracket.failed && *bracket.met - *bracket.failed <= steps.fine_percent) {
    counting.state = CountingState::found;
    counting.threshold_percent = bracket.met;
  } else {
    const bool near = bracket.failed && *bracket.met - *bracket.failed <= steps.step_percent;
    counting.next_percent =
        std::max(*bracket.met - (near ? steps.fine_percent : steps.step_percent), lowest_output);
  }
}

}  // namespace

Counting count_threshold(const std::vector<Pulse>& pulses, const CountingRule& rule,
                         const CountingSteps& steps) {
  check_pulses(pulses);
  check_rule(rule);
  check_steps(steps);
  Counting counting;
  counting.outputs = count(pulses, rule);
  counting.pulses = static_cast<int>(pulses.size());
  const auto begun = std::find_if(counting.outputs.begin(), counting.outputs.end(), [&](const auto& here) {
    return here.output_percent == pulses.back().output_percent && here.verdict == CountVerdict::open;
  });
  if (begun != counting.outputs.end())
    counting.next_percent = begun->output_percent;
  else
    settle(counting, bracket_of(counting.outputs), steps);
  return counting;
}

}  // namespace scalpmark::geometry
