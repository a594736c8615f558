#pragma once

#include <filesystem>
#include <vector>

#include "geometry/base/message.h"

namespace scalpmark::models {

/// A file that a run reads, and what it is in a sentence: "the case", "the scan".
struct Input {
  geometry::Message what;
  std::filesystem::path file;
};

/// Whether both names lead to the same file, by whatever spelling or link, symbolic or hard.
[[nodiscard]] bool same_file(const std::filesystem::path& a, const std::filesystem::path& b);

/// The input that writing to `out` would replace; null if none.
[[nodiscard]] const Input* input_replaced_by(const std::filesystem::path& out,
                                             const std::vector<Input>& inputs);

/// Refuses (ModelError) an output that is one of the inputs.
void refuse_input_as_output(const std::filesystem::path& out, const std::vector<Input>& inputs);

/// Whether `out` is there, holds something, and is not of the format (own_files.h) that is to be written over
/// it.
[[nodiscard]] bool replaces_another_kind(const std::filesystem::path& out, const std::string& format);

}  // namespace scalpmark::models
