#include "geometry/answers/binomial.h"

#include <algorithm>

#include "geometry/base/error.h"

namespace scalpmark::geometry {

namespace {

void check_trials(int pulses, double chance) {
  constexpr int most = 100000;
  if (!(chance >= 0 && chance <= 1))
    throw GeometryError(
        Message::of("The chance of an answer is %1; it must be from 0 to 1; correct it.", number(chance, 3)));
  if (pulses < 0 || pulses > most)
    throw GeometryError(
        Message::of("The number of pulses is %1; it must be from 0 to %2; correct it.", pulses, most));
}

/// exactly() without its refusals, for a chance inside 0 to 1 and a number of answers inside 0 to `pulses`.
double term(int answers, int pulses, double chance) {
  // The ways alone would overflow and the powers vanish: each is pulled in while it brings the product to 1.
  const int other = pulses - answers, few = std::min(answers, other);
  int way = 1, yes = answers, no = other;
  double product = 1;
  while (way <= few || yes > 0 || no > 0) {
    const bool low = product <= 1 || (yes == 0 && no == 0);
    if (way <= few && low)
      product *= 1 + static_cast<double>(pulses - few) / way++;
    else if (yes > 0)
      product *= chance, --yes;
    else
      product *= 1 - chance, --no;
  }
  return product;
}

}  // namespace

double exactly(int answers, int pulses, double chance) {
  check_trials(pulses, chance);
  if (answers < 0 || answers > pulses) return 0;
  if (chance == 0) return answers == 0 ? 1 : 0;
  if (chance == 1) return answers == pulses ? 1 : 0;
  return term(answers, pulses, chance);
}

double at_least(int answers, int pulses, double chance) {
  check_trials(pulses, chance);
  if (answers <= 0) return 1;
  if (answers > pulses || chance == 0) return 0;
  if (chance == 1) return 1;
  const double odds = chance / (1 - chance);
  // The terms fall away from the mean: begin at the end next to it, and take the complement beyond it.
  const bool upper = answers > pulses * chance;
  int k = upper ? answers : answers - 1;
  double sum = 0, now = term(k, pulses, chance);
  while (now > 0 && sum + now != sum) {
    sum += now;
    if (upper) {
      now *= odds * (pulses - k) / (k + 1);
      ++k;
    } else {
      now *= k / (odds * (pulses - k + 1));
      --k;
    }
  }
  return std::clamp(upper ? sum : 1 - sum, 0.0, 1.0);
}

void check_rule(const CountingRule& rule) {
  constexpr int most = 100;
  if (rule.answers < 1 || rule.pulses > most || rule.answers > rule.pulses)
    throw GeometryError(Message::of(
        "A threshold's rule of %1 of %2 cannot be counted; take 5 of 10, 4 of 8 or another of up to %3 pulses.",
        rule.answers, rule.pulses, most));
}

double chance_of_meeting(const CountingRule& rule, double chance) {
  check_rule(rule);
  return at_least(rule.answers, rule.pulses, chance);
}

}  // namespace scalpmark::geometry
