#pragma once

#include <filesystem>
#include <memory>
#include <string>

namespace scalpmark::tests {

/// A schema of models/schema, checked by a validator that is not ours (valijson).
class JsonSchema {
public:
  explicit JsonSchema(const std::string& name);
  ~JsonSchema();

  /// What the schema objects to; empty when the text is valid.
  [[nodiscard]] std::string objection(const std::string& text) const;

private:
  struct Rules;  // keeps the validator's headers, slow to compile, out of every test
  std::unique_ptr<Rules> rules_;
};

}  // namespace scalpmark::tests
