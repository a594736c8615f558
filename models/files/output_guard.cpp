#include "models/files/output_guard.h"

#include <algorithm>
#include <system_error>

#include "models/files/error.h"
#include "models/files/own_files.h"

namespace scalpmark::models {

namespace fs = std::filesystem;

bool same_file(const fs::path& a, const fs::path& b) {
  std::error_code error;
  if (a.empty() || b.empty()) return false;
  if (fs::equivalent(a, b, error)) return true;
  // A file system that numbers its files anew each time still spells their names alike.
  std::error_code one, other;
  const fs::path first = fs::weakly_canonical(a, one), second = fs::weakly_canonical(b, other);
  return !one && !other && first == second;
}

const Input* input_replaced_by(const fs::path& out, const std::vector<Input>& inputs) {
  const auto found = std::find_if(inputs.begin(), inputs.end(),
                                  [&](const Input& input) { return same_file(out, input.file); });
  return found == inputs.end() ? nullptr : &*found;
}

void refuse_input_as_output(const fs::path& out, const std::vector<Input>& inputs) {
  const Input* input = input_replaced_by(out, inputs);
  if (input == nullptr) return;
  throw ModelError(Message::of(
      "%1 is %2 that the result is made from, and would be replaced by it; choose another name.", out.string(),
      input->what));
}

bool replaces_another_kind(const fs::path& out, const std::string& format) {
  std::error_code error;
  if (!fs::is_regular_file(fs::status(out, error))) return false;  // what else it may be, writing it refuses
  const std::string there = own_format_of(out);
  return there != "nothing" && there != format;
}

}  // namespace scalpmark::models
