#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "geometry/answers/spot_answers.h"

namespace scalpmark::geometry {

/// For each spot the probability that, of all of them, it has the highest chance of an answer. Before the
/// first pulse every chance from 0 to 1 is as likely as any other (Beta(1,1)); after k answers to n pulses it
/// is Beta(k + 1, n - k + 1). A spot without pulses keeps its share: it may yet be the best.
/// The integral of one spot's density times all the others' distributions is that of a polynomial, taken
/// exactly by Gauss and Legendre's rule. Refuses (GeometryError) as check_spots() does.
[[nodiscard]] std::vector<double> chances_of_being_best(const std::vector<SpotAnswers>& spots);

/// The best spot so far.
struct BestSpot {
  std::size_t spot = 0;
  double probability = 0;  ///< of having the highest chance of an answer
};

/// Of the spots that answered, the one most probably best (of several alike, the first), with
/// `chances_of_being_best(spots)`. None where nothing answered. The probability may be below that of a spot
/// where no pulse was given.
[[nodiscard]] std::optional<BestSpot> best_spot(const std::vector<SpotAnswers>& spots,
                                                const std::vector<double>& chances);

/// How little is known about which spot is best: Shannon's entropy of the chances, bits. 0 when it is sure.
[[nodiscard]] double uncertainty_bits(const std::vector<double>& chances);

/// The next pulse, at the output of the others, that tells most about which spot is best.
struct TellingPulse {
  std::size_t spot = 0;
  double gain_bits = 0;  ///< by how much it is expected to lower uncertainty_bits
};

/// The spot where one more pulse is expected to lower uncertainty_bits most: what it is now, less what it
/// would be after an answer and after none, weighted by their chances (k + 1) / (n + 2) and the rest. Looks
/// one pulse ahead. Of several alike, the first. None without spots.
/// Criterion: expected information (Lindley 1956, Ann Math Stat 27:986-1005, memory). Refuses as
/// check_spots() does.
[[nodiscard]] std::optional<TellingPulse> most_telling_pulse(const std::vector<SpotAnswers>& spots);

}  // namespace scalpmark::geometry
