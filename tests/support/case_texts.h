#pragma once
// Case files as text, and what the reader says of them.
#include <string>

#include "models/cases/case_file.h"
#include "models/files/error.h"
#include "tests/support/sentence.h"

namespace scalpmark::tests {

/// How the texts below begin.
inline const std::string case_opening =
    R"({"format": "scalpmark-case", "version": 1, "head": {"kind": "generic"})";

inline std::string case_with(const std::string& key_and_value) {
  return case_opening + ", " + key_and_value + "}";
}

/// The cap came with version 2.
inline std::string case_in_version_2(std::string json) {
  const std::string one = "\"version\": 1";
  return json.replace(json.find(one), one.size(), "\"version\": 2");
}

inline std::string case_with_head(const std::string& head) {
  return R"({"format": "scalpmark-case", "version": 1, "head": )" + head + "}";
}

inline const std::string four_points =
    R"("nasion": [0, 90, 0], "inion": [0, -90, 0], "left_tragus": [-75, 0, 0], "right_tragus": [75, 0, 0])";

inline models::CaseFile parsed_case(const std::string& json) {
  return models::parse_case(json, "/somewhere", "bench.json");
}

inline std::string case_refusal(const std::string& json) {
  return sentence_of<models::ModelError>([&] { (void)parsed_case(json); });
}

}  // namespace scalpmark::tests
