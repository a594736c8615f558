#pragma once

#include <array>

#include "geometry/base/message.h"

namespace scalpmark::geometry {

/// How an edge in the air becomes a mark on the skin: a tape along the skin from the pulse point; straight
/// down the coil's normal past its edge; the skin nearest to the edge. A mark is drawn by one rule, and the
/// coil laid over it by one, which need not be the same.
enum class MarkRule { tape, drop, nearest };

inline constexpr std::array all_mark_rules{MarkRule::tape, MarkRule::drop, MarkRule::nearest};

/// The rule's name in a sentence.
[[nodiscard]] inline Message in_words(MarkRule rule) {
  return rule == MarkRule::tape   ? Message::of("tape")
         : rule == MarkRule::drop ? Message::of("drop")
                                  : Message::of("nearest");
}

/// The rule's name in files.
[[nodiscard]] constexpr const char* key_of(MarkRule rule) {
  return rule == MarkRule::tape ? "tape" : rule == MarkRule::drop ? "drop" : "nearest";
}

/// The two others.
[[nodiscard]] constexpr std::array<MarkRule, 2> other_rules(MarkRule rule) {
  switch (rule) {
    case MarkRule::tape:
      return {MarkRule::drop, MarkRule::nearest};
    case MarkRule::drop:
      return {MarkRule::tape, MarkRule::nearest};
    case MarkRule::nearest:
      break;
  }
  return {MarkRule::tape, MarkRule::drop};
}

}  // namespace scalpmark::geometry
