#pragma once

#include <string>
#include <vector>

#include "models/heads/skin_reading.h"

namespace scalpmark::fuzz {

/// A reader that is fed hostile bytes. It may refuse them in a sentence (the project's own errors) or run out
/// of memory (which the program turns into a sentence, see models/heads/skin_reading.h); anything else ends
/// the process.
struct Reader {
  std::string name;                ///< "case", or the end of a file's name: "obj", "nii.gz"
  std::vector<std::string> seeds;  ///< good files to start from, small
  void (*read)(const Reader& reader, const std::string& bytes, const models::SkinReading& reading);
};

[[nodiscard]] const std::vector<Reader>& readers();

}  // namespace scalpmark::fuzz
