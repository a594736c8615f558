#pragma once

#include <optional>
#include <vector>

#include "geometry/answers/binomial.h"
#include "geometry/answers/pulse.h"

namespace scalpmark::geometry {

/// What an output's count says by the rule: met once enough pulses were answered, failed once too few are
/// left for it to be met.
enum class CountVerdict { open, met, failed };

/// The count at one output.
struct CountAtOutput {
  int output_percent = 0;
  int pulses = 0;   ///< counted: the first of them, at most as many as the rule has
  int answers = 0;  ///< of the counted
  int beyond = 0;   ///< pulses given after those, which count for nothing: nobody chooses the best ten
  CountVerdict verdict = CountVerdict::open;

  friend bool operator==(const CountAtOutput&, const CountAtOutput&) = default;
};

/// Where the counting stands.
enum class CountingState {
  open,      ///< go on with the next output
  found,     ///< the lowest output that met the rule, the whole percent below it failed
  below,     ///< the rule is met at the stimulator's lowest output
  above_all  ///< the rule failed at the stimulator's most
};

/// How outputs are tried, in percent of the stimulator's output: the first, far from the threshold in steps,
/// near it by `fine`. 50 and 5 %: common practice, no source; 1 %: Rossini et al. 2015 (memory).
struct CountingSteps {
  int first_percent = 50;
  int step_percent = 5;
  int fine_percent = 1;
};

/// The threshold by counting.
struct Counting {
  std::vector<CountAtOutput> outputs;  ///< lowest first
  int pulses = 0;                      ///< all that were given
  CountingState state = CountingState::open;
  std::optional<int> threshold_percent;  ///< when found
  std::optional<int> next_percent;       ///< what to try next, while open; for finding the threshold only
};

/// Counts the pulses at a spot, in the order given, by the rule as practised: down by the step while the rule
/// is met, up by the step while it fails, and once a failed output lies within a step below the lowest that
/// met it, down from that by the fine step. An output that was begun last is counted to its end first. A
/// failed output above the lowest that met the rule is left aside. The threshold is the lowest output that
/// answers in half of the pulses. Counting needs more pulses than an estimate from all of them and ends less
/// close (Wang, Peterchev and Goetz 2023, J Neural Eng 20:056002): show chance_of_meeting() beside it. Says
/// nothing of an output to treat with. Refuses (GeometryError) as check_pulses() and check_rule() do, and
/// steps that are below 1 %, above 50 % or the fine one above the other.
[[nodiscard]] Counting count_threshold(const std::vector<Pulse>& pulses,
                                       const CountingRule& rule = five_of_ten,
                                       const CountingSteps& steps = {});

}  // namespace scalpmark::geometry
