#include "viewer/words/in_hand_words.h"

#include "viewer/words/words.h"

namespace scalpmark::viewer {

std::string in_hand_headline() {
  return words(Words::tr("Held by hand: not where the plan has it"));
}

}  // namespace scalpmark::viewer
