#include "tests/support/json_schema.h"

#include <nlohmann/json.hpp>
#include <valijson/adapters/nlohmann_json_adapter.hpp>
#include <valijson/schema.hpp>
#include <valijson/schema_parser.hpp>
#include <valijson/validation_results.hpp>
#include <valijson/validator.hpp>

#include "tests/support/temporary_folder.h"

namespace scalpmark::tests {

struct JsonSchema::Rules {
  valijson::Schema schema;
};

JsonSchema::JsonSchema(const std::string& name) : rules_(std::make_unique<Rules>()) {
  const auto text = read_bytes(std::filesystem::path(SCALPMARK_SOURCE_DIR) / "models" / "schema" / name);
  const auto parsed = nlohmann::json::parse(text);
  valijson::SchemaParser parser(valijson::SchemaParser::kDraft7);
  parser.populateSchema(valijson::adapters::NlohmannJsonAdapter(parsed), rules_->schema);
}

JsonSchema::~JsonSchema() = default;

std::string JsonSchema::objection(const std::string& text) const {
  const auto parsed = nlohmann::json::parse(text);
  valijson::Validator validator;
  valijson::ValidationResults results;
  if (validator.validate(rules_->schema, valijson::adapters::NlohmannJsonAdapter(parsed), &results))
    return "";
  std::string all = "refused";
  valijson::ValidationResults::Error error;
  while (results.popError(error)) {
    all += "; ";
    for (const auto& step : error.context) all += step;
    all += ": " + error.description;
  }
  return all;
}

}  // namespace scalpmark::tests
