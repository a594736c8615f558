#include "models/files/strict_json.h"

#include <algorithm>
#include <cmath>

#include "models/files/cut_short.h"
#include "models/files/error.h"

namespace scalpmark::models {

using geometry::Range;
using nlohmann::json;

namespace {

constexpr std::size_t deepest = 16;

Message shown_value(const json& value) {
  if (value.is_object()) return Message::of("a group { }");
  if (value.is_array()) return Message::of("a list of %1", value.size());
  if (!value.is_string()) return Message::verbatim(value.dump());
  return Message::verbatim(json(cut_short(value.get<std::string>())).dump());
}

/// Builds the tree while text is read. Not recursive, so that depth is refused long before it hurts.
class TreeBuilder : public nlohmann::json_sax<json> {
public:
  TreeBuilder(std::string_view text, const JsonSource& source) : text_(text), source_(source) {}
  json take() { return std::move(root_); }

  bool null() override { return add(nullptr); }
  bool boolean(bool value) override { return add(value); }
  bool number_integer(number_integer_t value) override { return add(value); }
  bool number_unsigned(number_unsigned_t value) override { return add(value); }
  bool number_float(number_float_t value, const string_t&) override { return add(value); }
  bool string(string_t& value) override { return add(std::move(value)); }
  bool binary(binary_t&) override { return false; }  // not in text
  bool start_object(std::size_t) override { return open(json::object()); }
  bool start_array(std::size_t) override { return open(json::array()); }
  bool key(string_t& name) override {
    if (stack_.back()->contains(name))
      throw ModelError(
          Message::of("%1: the key %2 is given twice in the same group; keep one and read the %3 again.",
                      source_.name, shown_value(name), source_.kind));
    key_ = std::move(name);
    return true;
  }
  bool end_object() override { return close(); }
  bool end_array() override { return close(); }

  bool parse_error(std::size_t position, const std::string& token, const json::exception& error) override {
    const std::string message = error.what();
    const auto says = [&](const char* words) { return message.find(words) != std::string::npos; };
    if (text_.find_first_not_of(" \t\r\n") == std::string_view::npos)
      throw ModelError(
          Message::of("%1 is empty, which is no %2; choose another file.", source_.name, source_.kind));
    const std::size_t at = std::min(position == 0 ? 0 : position - 1, text_.size());
    const std::string_view before = text_.substr(0, at);
    const std::size_t line_start = before.rfind('\n') == std::string_view::npos ? 0 : before.rfind('\n') + 1;
    const Message where = Message::of(
        "line %1, column %2", std::count(before.begin(), before.end(), '\n') + 1, at - line_start + 1);
    if (error.id == 406)
      throw ModelError(Message::of("%1: the number %2 at %3 is too large; correct it and read the %4 again.",
                                   source_.name, cut_short(token), where, source_.kind));
    if (says("UTF-8"))
      throw ModelError(
          Message::of("%1 is not JSON: the text at %2 is not UTF-8; correct it and read the %3 again.",
                      source_.name, where, source_.kind));
    if (says("unexpected end of input") || at >= text_.size())
      throw ModelError(
          Message::of("%1 is not JSON: it ends too early, at %2; correct it and read the %3 again.",
                      source_.name, where, source_.kind));
    throw ModelError(Message::of(
        "%1 is not JSON: what stands at %2 does not belong there; correct it and read the %3 again.",
        source_.name, where, source_.kind));
  }

private:
  bool add(json&& value) {
    place(std::move(value));
    return true;
  }
  bool open(json&& container) {
    if (stack_.size() >= deepest)
      throw ModelError(Message::of("%1 is nested deeper than %2 levels, which no %3 is; choose another file.",
                                   source_.name, deepest, source_.kind));
    stack_.push_back(place(std::move(container)));
    return true;
  }
  bool close() {
    stack_.pop_back();
    return true;
  }
  json* place(json&& value) {
    if (stack_.empty()) {
      root_ = std::move(value);
      return &root_;
    }
    json& parent = *stack_.back();
    if (parent.is_array()) {
      parent.push_back(std::move(value));
      return &parent.back();
    }
    json& child = parent[key_];
    child = std::move(value);
    return &child;
  }

  std::string_view text_;
  const JsonSource& source_;
  json root_;
  std::vector<json*> stack_;  // the containers still open; each holds the next
  std::string key_;
};

std::string with_commas(std::span<const std::string_view> names) {
  std::string text;
  for (const auto name : names) text += (text.empty() ? "" : ", ") + std::string(name);
  return text;
}

Message all_of(std::span<const std::string_view> names) {
  if (names.size() < 2) return Message::verbatim(with_commas(names));
  return Message::of("%1 and %2", with_commas(names.first(names.size() - 1)), names.back());
}

Message one_of(std::span<const std::string_view> names) {
  if (names.size() < 2) return Message::verbatim(with_commas(names));
  return Message::of("%1 or %2", with_commas(names.first(names.size() - 1)), names.back());
}

bool is_number_in(const json& value, const Range& range) {
  return value.is_number() && range.holds(value.get<double>());
}

}  // namespace

json parse_strict(std::string_view text, const JsonSource& source) {
  // The parser takes a zero byte for the end and would not look at what follows.
  if (text.find('\0') != std::string_view::npos)
    throw ModelError(Message::of("%1 is not JSON: it holds zero bytes, as no text does; choose another file.",
                                 source.name));
  TreeBuilder builder(text, source);
  json::sax_parse(text.begin(), text.end(), &builder);
  return builder.take();
}

int require_format(const json& parsed, const JsonSource& source, std::string_view format, int newest) {
  if (!parsed.is_object())
    throw ModelError(
        Message::of("%1 is not a Scalpmark %2: it should be a group { } but is %3; choose another file.",
                    source.name, source.kind, shown_value(parsed)));
  const auto found = parsed.find("format");
  if (found == parsed.end())
    throw ModelError(
        Message::of("%1 is not a Scalpmark %2: format is missing and must be \"%3\"; choose another file.",
                    source.name, source.kind, format));
  if (*found != format)
    throw ModelError(
        Message::of("%1 is not a Scalpmark %2: format must be \"%3\", but is %4; choose another file.",
                    source.name, source.kind, format, shown_value(*found)));
  const auto number = parsed.find("version");
  if (number == parsed.end())
    throw ModelError(Message::of("%1: version is missing and must be %2; add it and read the %3 again.",
                                 source.name, newest, source.kind));
  for (int version = 1; version <= newest; ++version)
    if (number->is_number() && *number == version) return version;
  if (newest == 1)
    throw ModelError(
        Message::of("%1: version must be %2, but is %3; use the program that wrote it, or a newer one.",
                    source.name, newest, shown_value(*number)));
  throw ModelError(Message::of(
      "%1: version must be from 1 to %2, but is %3; use the program that wrote it, or a newer one.",
      source.name, newest, shown_value(*number)));
}

JsonGroup::JsonGroup(const json& parsed, const JsonSource& source, std::string path,
                     std::span<const std::string_view> keys)
    : json_(parsed), source_(source), path_(std::move(path)) {
  for (const auto& [key, value] : json_.items())
    if (std::find(keys.begin(), keys.end(), key) == keys.end())
      throw ModelError(
          Message::of("%1: %2 is not a key known here (known: %3); remove it and read the %4 again.",
                      source_.name, path_ + json(cut_short(key)).dump(), all_of(keys), source_.kind));
}

JsonGroup JsonGroup::group(std::string_view key, std::span<const std::string_view> keys) const {
  if (!at(key).is_object()) refuse(key, Message::of("must be a group { }, but is %1", shown(key)));
  return {at(key), source_, path_ + std::string(key) + ".", keys};
}

std::vector<JsonGroup> JsonGroup::groups(std::string_view key, std::span<const std::string_view> keys) const {
  require({key});
  if (!at(key).is_array()) refuse(key, Message::of("must be a list [ ], but is %1", shown(key)));
  std::vector<JsonGroup> all;
  for (const json& item : at(key)) {
    const std::string path = std::string(key) + "[" + std::to_string(all.size()) + "]";
    if (!item.is_object()) refuse(path, Message::of("must be a group { }, but is %1", shown_value(item)));
    all.push_back(JsonGroup(item, source_, path_ + path + ".", keys));
  }
  return all;
}

void JsonGroup::number(std::string_view key, const Range& range, const Message& unit, double& into) const {
  if (!has(key)) return;
  if (!is_number_in(at(key), range))
    refuse(key, Message::of("must be a number from %1 to %2 (%3), but is %4", geometry::number(range.low, 3),
                            geometry::number(range.high, 3), unit, shown(key)));
  into = at(key).get<double>();
}

void JsonGroup::whole_number(std::string_view key, const Range& range, int& into) const {
  if (!has(key)) return;
  if (!is_number_in(at(key), range) || std::floor(at(key).get<double>()) != at(key).get<double>())
    refuse(key, Message::of("must be a whole number from %1 to %2, but is %3", geometry::number(range.low),
                            geometry::number(range.high), shown(key)));
  into = static_cast<int>(at(key).get<double>());
}

void JsonGroup::yes_or_no(std::string_view key, bool& into) const {
  if (!has(key)) return;
  if (!at(key).is_boolean()) refuse(key, Message::of("must be true or false, but is %1", shown(key)));
  into = at(key).get<bool>();
}

void JsonGroup::whole_pair(std::string_view key, const Range& range, std::array<int, 2>& into) const {
  if (!has(key)) return;
  const json& value = at(key);
  const auto is_whole = [&](const json& n) {
    return is_number_in(n, range) && std::floor(n.get<double>()) == n.get<double>();
  };
  if (!value.is_array() || value.size() != 2 || !is_whole(value[0]) || !is_whole(value[1]))
    refuse(key, Message::of("must be two whole numbers from %1 to %2, but is %3", geometry::number(range.low),
                            geometry::number(range.high), shown(key)));
  for (std::size_t k = 0; k < 2; ++k) into[k] = static_cast<int>(value[k].get<double>());
}

void JsonGroup::text(std::string_view key, std::string& into, std::size_t most_characters) const {
  if (!has(key)) return;
  if (!at(key).is_string()) refuse(key, Message::of("must be text in quotes, but is %1", shown(key)));
  const auto& value = at(key).get_ref<const std::string&>();
  const auto characters = static_cast<std::size_t>(std::count_if(
      value.begin(), value.end(), [](char c) { return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U; }));
  if (characters > most_characters)
    refuse(key, Message::of("must be at most %1 characters long, but has %2", most_characters, characters));
  into = value;
}

void JsonGroup::point(std::string_view key, Eigen::Vector3d& into) const {
  if (!has(key)) return;
  const json& value = at(key);
  const bool good = value.is_array() && value.size() == 3 &&
                    std::all_of(value.begin(), value.end(), [](const json& n) { return n.is_number(); });
  if (!good) refuse(key, Message::of("must be three numbers [x, y, z] in mm, but is %1", shown(key)));
  for (std::size_t k = 0; k < 3; ++k) into[static_cast<Eigen::Index>(k)] = value[k].get<double>();
}

void JsonGroup::pairs(std::string_view key, const Range& range, std::vector<Eigen::Vector2d>& into) const {
  if (!has(key)) return;
  if (!at(key).is_array()) refuse(key, Message::of("must be a list of points [x, y], but is %1", shown(key)));
  into.clear();
  for (const json& item : at(key)) {
    const std::string place = std::string(key) + "[" + std::to_string(into.size()) + "]";
    take_pair(item, place, range, into.emplace_back());
  }
}

void JsonGroup::pair(std::string_view key, const Range& range, Eigen::Vector2d& into) const {
  if (has(key)) take_pair(at(key), std::string(key), range, into);
}

void JsonGroup::take_pair(const json& value, const std::string& key, const Range& range,
                          Eigen::Vector2d& into) const {
  if (!value.is_array() || value.size() != 2 || !is_number_in(value[0], range) ||
      !is_number_in(value[1], range))
    refuse(key, Message::of("must be two numbers from %1 to %2 (mm), but is %3", geometry::number(range.low),
                            geometry::number(range.high), shown_value(value)));
  into = {value[0].get<double>(), value[1].get<double>()};
}

std::size_t JsonGroup::index_of(std::string_view key, std::span<const std::string_view> names) const {
  if (at(key).is_string()) {
    const auto found = std::find(names.begin(), names.end(), at(key).get_ref<const std::string&>());
    if (found != names.end()) return static_cast<std::size_t>(found - names.begin());
  }
  refuse(key, Message::of("must be %1, but is %2", one_of(names), shown(key)));
}

void JsonGroup::require(std::initializer_list<std::string_view> keys) const {
  for (const auto key : keys)
    if (!has(key))
      throw ModelError(Message::of("%1: %2 is missing; add it and read the %3 again.", source_.name,
                                   path_ + std::string(key), source_.kind));
}

void JsonGroup::refuse(std::string_view key, const Message& why) const {
  throw ModelError(Message::of("%1: %2 %3; correct it and read the %4 again.", source_.name,
                               path_ + std::string(key), why, source_.kind));
}

Message JsonGroup::shown(std::string_view key) const {
  return shown_value(at(key));
}

// --- Writing
// ------------------------------------------------------------------------------------------------

namespace {

using nlohmann::ordered_json;

constexpr std::size_t short_group = 110;  // characters that are read as one line

bool has_plain_values(const ordered_json& value) {
  return std::none_of(value.begin(), value.end(), [](const ordered_json& v) { return v.is_structured(); });
}

/// A group whose values are plain or lists of plain ones.
bool is_flat(const ordered_json& value) {
  return value.is_object() && std::all_of(value.begin(), value.end(), [](const ordered_json& v) {
           return !v.is_object() && (!v.is_array() || has_plain_values(v));
         });
}

void write(const ordered_json& value, std::size_t indent, std::string& out, bool one_line = false);

/// Written as one short line, or not at all.
bool write_short(const ordered_json& value, std::size_t indent, std::string& out) {
  const std::size_t before = out.size();
  write(value, indent, out, true);
  if (out.size() - before <= short_group) return true;
  out.resize(before);
  return false;
}

void write(const ordered_json& value, std::size_t indent, std::string& out, bool one_line) {
  if (value.is_number_float() && !std::isfinite(value.get<double>()))
    throw ModelError(Message::of(
        "A number to be written is not finite, so nothing was written; check the head and the case."));
  const bool plain = !value.is_structured() || value.empty();
  if (plain) {
    // A plain 50 reads better than 50.0 and means the same.
    const bool whole = value.is_number_float() && std::abs(value.get<double>()) < 1e15 &&
                       std::floor(value.get<double>()) == value.get<double>();
    try {
      out += whole ? std::to_string(static_cast<long long>(value.get<double>())) : value.dump();
    } catch (const ordered_json::exception&) {
      throw ModelError(Message::of(
          "A text to be written is not UTF-8, so nothing was written; rename it or type it again."));
    }
    return;
  }
  const bool list = value.is_array();
  const bool on_one_line = one_line || (list && has_plain_values(value));
  const std::string line_end = on_one_line ? "" : "\n" + std::string(indent + 2, ' ');
  out += list ? '[' : '{';
  bool first = true;
  for (const auto& [key, item] : value.items()) {
    if (!first) out += on_one_line ? ", " : ",";
    first = false;
    out += line_end;
    if (!list) {
      write(key, 0, out);
      out += ": ";
    }
    if (!list || !is_flat(item) || !write_short(item, indent + 2, out)) write(item, indent + 2, out);
  }
  if (!on_one_line) out += "\n" + std::string(indent, ' ');
  out += list ? ']' : '}';
}

}  // namespace

std::string pretty_json(const ordered_json& value) {
  std::string out;
  write(value, 0, out);
  out += '\n';
  return out;
}

}  // namespace scalpmark::models
