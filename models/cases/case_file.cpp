#include "models/cases/case_file.h"

#include "models/cases/head_json.h"
#include "models/cases/settings_json.h"
#include "models/cases/visits_json.h"
#include "models/coils/coil_library.h"
#include "models/files/embedded_data.h"
#include "models/files/error.h"
#include "models/files/safe_file.h"
#include "models/files/strict_json.h"

namespace scalpmark::models {

namespace fs = std::filesystem;
using nlohmann::ordered_json;

namespace {

constexpr int newest_version = 2;
constexpr std::size_t largest_case = 8'000'000;  // bytes; forty visits of 200 pulses are 1 MB

}  // namespace

CaseFile default_case() {
  for (const EmbeddedFile& file : embedded_files()) {
    if (file.name != "data/starting_values/default.json") continue;
    const JsonSource source{std::string(file.name), Message::of("file of starting values")};
    const nlohmann::json parsed = parse_strict(file.text, source);
    const int version = require_format(parsed, source, "scalpmark-starting-values", 2);
    const JsonGroup top(
        parsed, source,
        {"format", "version", "title", "source", "side", "search", "coil", "hotspot", "treatment"});
    top.require({"title", "source", "side", "search", "coil", "hotspot", "treatment"});
    CaseFile case_file;
    read_settings(top, version, case_file.the_case);
    // The spot of the starting values is the one a plan is shown for until some spot has answered.
    case_file.the_case.hotspot_awaited = true;
    return case_file;
  }
  throw ModelError(Message::of("The starting values are missing from this program; install it again."));
}

CaseFile read_case(const fs::path& file) {
  return parse_case(read_whole(file, largest_case), folder_of(file), file.string());
}

CaseFile parse_case(const std::string& text, const fs::path& folder, const std::string& name) {
  const JsonSource source{name, Message::of("case")};
  const nlohmann::json parsed = parse_strict(text, source);
  const int version = require_format(parsed, source, "scalpmark-case", newest_version);
  const JsonGroup top =
      version == 1 ? JsonGroup(parsed, source,
                               {"format", "version", "label", "head", "tape_mm", "side", "search", "coil",
                                "hotspot", "treatment", "errors"})
                   : JsonGroup(parsed, source,
                               {"format", "version", "label", "head", "tape_mm", "side", "search", "coil",
                                "hotspot", "treatment", "cap", "errors", "answers", "visits"});
  top.require({"head"});
  CaseFile case_file = default_case();
  case_file.folder = folder;
  case_file.head = read_head_source(top);
  top.text("label", case_file.the_case.label);
  read_settings(top, version, case_file.the_case);
  if (top.has("visits")) case_file.the_case.visits = read_visits(top);
  for (const std::size_t i : geometry::out_of_order(case_file.the_case.visits))
    case_file.notes.push_back(Message::of(
        "Visit %1 (%2) is dated before the visit entered before it; if that is a slip, correct its date.",
        i + 1, iso(case_file.the_case.visits[i]->date)));
  if (version == 1)
    case_file.notes.push_back(Message::of(
        "The case was written as version 1, with one marking rule (%1): it is taken for drawing the marks and for laying the coil alike.",
        in_words(case_file.the_case.coil.laid_by)));
  if (const auto errors = parsed.find("errors"); errors != parsed.end() && errors->contains("cap_shift_mm"))
    case_file.notes.push_back(Message::of(
        "This older case gives one error for the cap (%1 mm): it is used for sliding forward or back and to a side, with %2 degrees of turning.",
        geometry::number(case_file.the_case.errors.cap_forward_mm),
        geometry::number(case_file.the_case.errors.cap_turn_deg)));
  return case_file;
}

std::string case_json(const CaseFile& case_file) {
  ordered_json out;
  out["format"] = "scalpmark-case";
  out["version"] = newest_version;
  out["label"] = case_file.the_case.label;
  out["head"] = head_source_json(case_file.head);
  write_settings(case_file.the_case, out);
  if (!case_file.the_case.visits.empty()) out["visits"] = visits_json(case_file.the_case.visits);
  return pretty_json(out);
}

void write_case(const fs::path& file, const CaseFile& case_file) {
  CaseFile moved = case_file;
  moved.head = found_from(case_file.head, case_file.folder, folder_of(file));
  write_whole(file, case_json(moved));
}

}  // namespace scalpmark::models
