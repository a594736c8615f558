#include "viewer/words/rule_words.h"

namespace scalpmark::viewer {

using geometry::MarkRule;
using geometry::Message;

Message rule_name(MarkRule rule) {
  switch (rule) {
    case MarkRule::tape:
      return Message::of("tape");
    case MarkRule::drop:
      return Message::of("drop");
    case MarkRule::nearest:
      return Message::of("nearest");
  }
  return {};
}

}  // namespace scalpmark::viewer
