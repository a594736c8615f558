#pragma once

namespace scalpmark::geometry {

/// The chance of exactly `answers` answers to `pulses` pulses, each answered with the chance `chance` and
/// none caring about the others. Good to a share of 1e-10, and to
/// 1e-12 up to 1000 pulses. Refuses (GeometryError) a chance that is not from 0
/// to 1 and a number of pulses that is not from 0 to 100000. Closed form: n! / (k! (n - k)!) p^k (1 - p)^(n
/// - k).
[[nodiscard]] double exactly(int answers, int pulses, double chance);

/// The chance of that many answers or more: the exact tail, summed from its largest term. Refuses as
/// exactly() does.
[[nodiscard]] double at_least(int answers, int pulses, double chance);

/// A threshold's rule: met by an output at which that many of so many pulses are answered.
struct CountingRule {
  int answers = 5;
  int pulses = 10;

  friend bool operator==(const CountingRule&, const CountingRule&) = default;
};

/// Those in use: five of ten (Rossini et al. 2015, Clin Neurophysiol 126:1071-1107, memory) and four of eight
/// (common practice, no source).
inline constexpr CountingRule five_of_ten{5, 10}, four_of_eight{4, 8};

/// The chance that the rule is met at an output that answers with this chance in truth. It is the same
/// whether all pulses are given or one stops as soon as the outcome is settled. Refuses as exactly() does,
/// and a rule that asks for no answer or for more than its pulses.
[[nodiscard]] double chance_of_meeting(const CountingRule& rule, double chance);

/// Refuses (GeometryError) a rule that asks for no answer, for more than its pulses, or for over 100 pulses.
void check_rule(const CountingRule& rule);

}  // namespace scalpmark::geometry
