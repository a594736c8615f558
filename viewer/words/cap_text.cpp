#include "viewer/words/cap_text.h"

#include "viewer/words/cap_words.h"
#include "viewer/words/plain_text.h"
#include "viewer/words/words.h"

namespace scalpmark::viewer {

std::string cap_text(const geometry::CapToday& today) {
  std::string text = wrapped_text(words(cap_sentence(today)));
  if (const geometry::Message open = unsaid_sentence(today.found); !open.empty())
    text += wrapped_text(words(open));
  return text;
}

}  // namespace scalpmark::viewer
