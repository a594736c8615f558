#pragma once

#include <QString>
#include <string>

namespace scalpmark::viewer {

/// A sentence of the kernel or of a reader (a refusal, a warning, a note) in the language of the desktop; as
/// it is where it is not known here or nobody has translated it.
[[nodiscard]] QString translated(const std::string& sentence);

/// Whether a sentence is one of those that can be translated.
[[nodiscard]] bool is_known_sentence(const std::string& sentence);

/// Whether one of those that can be translated holds these words, for the test that looks through the code.
[[nodiscard]] bool holds_sentence_part(const std::string& words_of_code);

}  // namespace scalpmark::viewer
