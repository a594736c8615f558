#pragma once

#include <QString>
#include <string>

namespace scalpmark::viewer {

/// What the kernel or a reader says (a refusal, a warning, a note, the name of a coil's part, which head it
/// is) in the language of the desktop; as it is where it is not known here or nobody has translated it.
[[nodiscard]] QString translated(const std::string& said_in_english);

}  // namespace scalpmark::viewer
