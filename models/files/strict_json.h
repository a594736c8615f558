#pragma once

#include <Eigen/Core>
#include <array>
#include <initializer_list>
#include <nlohmann/json.hpp>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "geometry/base/message.h"
#include "geometry/base/ranges.h"

namespace scalpmark::models {

/// Where JSON text comes from, for sentences: "bench.json" and "case".
struct JsonSource {
  std::string name;
  geometry::Message kind;
};

/// Reads JSON text without leniency. Refuses (ModelError, naming file, line and column or key): not JSON, not
/// UTF-8, groups and lists nested deeper than 16, a key given twice in a group, a number too large for a
/// double.
[[nodiscard]] nlohmann::json parse_strict(std::string_view text, const JsonSource& source);

/// The version of JSON that is a group of this format, from 1 to the newest one known. Refuses (ModelError)
/// all else.
int require_format(const nlohmann::json& json, const JsonSource& source, std::string_view format, int newest);

/// One choice of an enumeration as a file writes it.
template <class Value>
struct Choice {
  std::string_view name;
  Value value;
};

/// A JSON group being read: refuses (ModelError, naming file and key) keys nobody expects, on construction,
/// and values of the wrong type or out of range, when asked for. A setting that is absent leaves `into` as it
/// is.
class JsonGroup {
public:
  /// The top group of a file.
  JsonGroup(const nlohmann::json& json, const JsonSource& source,
            std::initializer_list<std::string_view> keys)
      : JsonGroup(json, source, "", std::span(keys.begin(), keys.size())) {}
  JsonGroup(const nlohmann::json& json, const JsonSource& source, std::span<const std::string_view> keys)
      : JsonGroup(json, source, "", keys) {}

  [[nodiscard]] bool has(std::string_view key) const { return json_.contains(std::string(key)); }
  [[nodiscard]] JsonGroup group(std::string_view key, std::initializer_list<std::string_view> keys) const {
    return group(key, std::span(keys.begin(), keys.size()));
  }
  [[nodiscard]] JsonGroup group(std::string_view key, std::span<const std::string_view> keys) const;
  /// The groups of a list, which must be present.
  [[nodiscard]] std::vector<JsonGroup> groups(std::string_view key,
                                              std::initializer_list<std::string_view> keys) const {
    return groups(key, std::span(keys.begin(), keys.size()));
  }
  [[nodiscard]] std::vector<JsonGroup> groups(std::string_view key,
                                              std::span<const std::string_view> keys) const;

  void number(std::string_view key, const geometry::Range& range, const geometry::Message& unit,
              double& into) const;
  void whole_number(std::string_view key, const geometry::Range& range, int& into) const;
  void text(std::string_view key, std::string& into, std::size_t most_characters = 200) const;
  template <class Value, std::size_t count>
  void choice(std::string_view key, const std::array<Choice<Value>, count>& choices, Value& into) const {
    std::array<std::string_view, count> names;
    for (std::size_t i = 0; i < count; ++i) names[i] = choices[i].name;
    if (has(key)) into = choices[index_of(key, names)].value;
  }
  void yes_or_no(std::string_view key, bool& into) const;
  /// Two whole numbers in the range.
  void whole_pair(std::string_view key, const geometry::Range& range, std::array<int, 2>& into) const;
  /// Three finite numbers.
  void point(std::string_view key, Eigen::Vector3d& into) const;
  /// Two numbers in the range.
  void pair(std::string_view key, const geometry::Range& range, Eigen::Vector2d& into) const;
  /// A list of such pairs.
  void pairs(std::string_view key, const geometry::Range& range, std::vector<Eigen::Vector2d>& into) const;

  /// Refuses (ModelError) the absence of a key.
  void require(std::initializer_list<std::string_view> keys) const;
  /// Refuses (ModelError) with "FILE: KEY WHY; correct it and read the KIND again."
  [[noreturn]] void refuse(std::string_view key, const geometry::Message& why) const;
  /// The value at a key for such a sentence, shortened.
  [[nodiscard]] geometry::Message shown(std::string_view key) const;

private:
  JsonGroup(const nlohmann::json& json, const JsonSource& source, std::string path,
            std::span<const std::string_view> keys);
  void take_pair(const nlohmann::json& value, const std::string& key, const geometry::Range& range,
                 Eigen::Vector2d& into) const;
  [[nodiscard]] const nlohmann::json& at(std::string_view key) const { return json_.at(std::string(key)); }
  [[nodiscard]] std::size_t index_of(std::string_view key, std::span<const std::string_view> names) const;

  const nlohmann::json& json_;
  const JsonSource& source_;
  std::string path_;  // "" or "search."
};

/// JSON laid out for people: two spaces a level, lists of plain values on one line, and so short groups in a
/// list. Refuses (ModelError) text
/// that is not UTF-8 and numbers that are not finite.
[[nodiscard]] std::string pretty_json(const nlohmann::ordered_json& json);

}  // namespace scalpmark::models
