#include "viewer/words/found_words.h"

#include "viewer/words/numbers.h"

namespace scalpmark::viewer {

using geometry::FoundMark;
using geometry::FoundPlace;
using geometry::Message;

std::string place_tag(std::size_t index) {
  constexpr std::size_t letters = 26;
  return index < letters ? std::string(1, static_cast<char>('A' + index)) : std::to_string(index + 1);
}

Message found_sentence(const FoundMark& mark, double apart_mm) {
  const std::size_t count = mark.places.size();
  if (count == 0) return {};
  const FoundPlace& place = mark.places[mark.taken.value_or(0)];
  if (mark.taken && count > 1)
    return mark.nearest_to_plan
               ? Message::of(
                     "Of %1 places that fit these tapes the one nearest to the plan was taken, as was asked for (%2); the tapes do not say that the mark is there.",
                     count, place_tag(*mark.taken))
               : Message::of(
                     "Of %1 places that fit these tapes, %2 was chosen; the tapes do not say that the mark is there.",
                     count, place_tag(*mark.taken));
  if (count > 1)
    return Message::of(
        "These tapes fit %1 places, up to %2 apart; choose the one where the mark is, or measure one more tape.",
        count, tape_length(apart_mm));
  if (place.spread_mm > geometry::vague_mm)
    return Message::of(
        "These tapes cross at a sharp angle, and the mark may be %1 off; measure one more tape.",
        tape_length(place.spread_mm));
  return Message::of("The mark is within %1 of where these tapes meet, 95 times of 100.",
                     tape_length(place.spread_mm));
}

Message place_sentence(const FoundPlace& place) {
  return Message::of("the tapes miss it by %1 at most; sure to %2", tape_length(place.worst_mm),
                     tape_length(place.spread_mm));
}

}  // namespace scalpmark::viewer
