#pragma once

#include <filesystem>
#include <nlohmann/json.hpp>
#include <stdexcept>
#include <string>
#include <valijson/adapters/nlohmann_json_adapter.hpp>
#include <valijson/schema.hpp>
#include <valijson/schema_parser.hpp>
#include <valijson/validation_results.hpp>
#include <valijson/validator.hpp>

#include "tests/support/temporary_folder.h"

namespace scalpmark::tests {

/// A schema of models/schema, checked by a validator that is not ours (valijson).
class JsonSchema {
public:
  explicit JsonSchema(const std::string& name) {
    const auto text = read_bytes(std::filesystem::path(SCALPMARK_SOURCE_DIR) / "models" / "schema" / name);
    const auto parsed = nlohmann::json::parse(text);
    valijson::SchemaParser parser(valijson::SchemaParser::kDraft7);
    parser.populateSchema(valijson::adapters::NlohmannJsonAdapter(parsed), schema_);
  }

  /// What the schema objects to; empty when the text is valid.
  [[nodiscard]] std::string objection(const std::string& text) const {
    const auto parsed = nlohmann::json::parse(text);
    valijson::Validator validator;
    valijson::ValidationResults results;
    if (validator.validate(schema_, valijson::adapters::NlohmannJsonAdapter(parsed), &results)) return "";
    std::string all = "refused";
    valijson::ValidationResults::Error error;
    while (results.popError(error)) {
      all += "; ";
      for (const auto& step : error.context) all += step;
      all += ": " + error.description;
    }
    return all;
  }

private:
  valijson::Schema schema_;
};

}  // namespace scalpmark::tests
