#include "models/meshes/ply_check.h"

#include <algorithm>
#include <array>
#include <bit>
#include <charconv>
#include <cstdint>
#include <cstring>
#include <sstream>
#include <string_view>
#include <vector>

#include "models/files/error.h"

namespace scalpmark::models {

namespace {

/// Bytes of a property's type in a binary file; 0: no type of the format.
std::size_t size_of(const std::string& type) {
  if (type == "char" || type == "uchar" || type == "int8" || type == "uint8") return 1;
  if (type == "short" || type == "ushort" || type == "int16" || type == "uint16") return 2;
  if (type == "int" || type == "uint" || type == "float" || type == "int32" || type == "uint32" ||
      type == "float32")
    return 4;
  if (type == "double" || type == "float64") return 8;
  return 0;
}

struct Property {
  std::size_t size = 0;        ///< of the value, or of each value of a list
  std::size_t count_size = 0;  ///< of a list's length; 0: no list
  bool whole_count = false;    ///< the list's length is of a whole-number type
};

struct Element {
  std::string name;
  std::uint64_t count = 0;
  std::vector<Property> properties;
};

struct Header {
  enum class Format { ascii, little, big } format = Format::ascii;
  std::vector<Element> elements;
  std::size_t end = 0;  ///< where the elements begin
};

[[noreturn]] void refuse_ply(const std::string& name, const Message& what) {
  throw ModelError(Message::of("%1 is damaged: %2; export it again.", name, what));
}

Property property_from(std::istringstream& words, const std::string& name) {
  std::string type, count_type;
  words >> type;
  if (type != "list") {
    if (size_of(type) == 0) refuse_ply(name, Message::of("its header has a property of no known type"));
    return {size_of(type), 0, false};
  }
  words >> count_type >> type;
  if (size_of(type) == 0 || size_of(count_type) == 0)
    refuse_ply(name, Message::of("its header has a property of no known type"));
  return {size_of(type), size_of(count_type), !count_type.starts_with("float") && count_type != "double"};
}

/// Assimp makes room for the first such element, and puts the second into it.
void refuse_repeated(const Header& header, const std::string& name) {
  const auto times = [&](const auto& is_such) {
    return std::count_if(header.elements.begin(), header.elements.end(), is_such);
  };
  if (times([](const Element& e) { return e.name.starts_with("vertex"); }) > 1 ||
      times([](const Element& e) { return e.name.starts_with("face") || e.name.starts_with("tristrips"); }) >
          1)
    refuse_ply(name, Message::of("its header gives corners or triangles twice"));
}

Header header_of(const std::string& bytes, const std::string& name) {
  Header header;
  std::size_t at = 0;
  bool format_known = false;
  while (at < bytes.size()) {
    const std::size_t line_begin = at, end = std::min(bytes.find('\n', at), bytes.size());
    std::istringstream words(bytes.substr(at, std::min<std::size_t>(end - at, 1000)));
    at = end + 1;
    std::string first, second;
    words >> first;
    if (first.starts_with("end_header")) {
      // Anything else on the line hides the header's end from Assimp.
      const std::size_t blank_from = bytes.find_last_not_of(" \t\r", end == 0 ? 0 : end - 1) + 1;
      if (blank_from - line_begin != first.size() || first != "end_header") continue;
      if (!format_known) refuse_ply(name, Message::of("its header names no format"));
      refuse_repeated(header, name);
      header.end = std::min(at, bytes.size());
      return header;
    }
    if (first == "format") {
      words >> second;
      format_known = second == "ascii" || second == "binary_little_endian" || second == "binary_big_endian";
      header.format = second == "ascii"                  ? Header::Format::ascii
                      : second == "binary_little_endian" ? Header::Format::little
                                                         : Header::Format::big;
    } else if (first == "element") {
      Element element;
      if (!(words >> element.name >> element.count))
        refuse_ply(name, Message::of("its header has an element without a number"));
      header.elements.push_back(element);
    } else if (first == "property") {
      if (header.elements.empty())
        refuse_ply(name, Message::of("its header has a property before any element"));
      header.elements.back().properties.push_back(property_from(words, name));
    }
  }
  refuse_ply(name, Message::of("its header has no end"));
}

/// The next word of a line; empty at its end.
std::string_view next_word(std::string_view& line) {
  const auto blank = [](char c) { return c == ' ' || c == '\t' || c == '\r'; };
  while (!line.empty() && blank(line.front())) line.remove_prefix(1);
  std::size_t length = 0;
  while (length < line.size() && !blank(line[length])) ++length;
  const std::string_view word = line.substr(0, length);
  line.remove_prefix(length);
  return word;
}

void check_lines(const std::string& bytes, const Header& header, const std::string& name) {
  std::size_t at = header.end;
  auto line_number = static_cast<std::uint64_t>(
      1 + std::count(bytes.begin(), bytes.begin() + static_cast<std::ptrdiff_t>(at), '\n'));
  const auto bad = [&](const Message& what) {
    refuse_ply(name, Message::of("%1 in line %2", what, line_number));
  };
  for (const Element& element : header.elements)
    for (std::uint64_t i = 0; i < element.count; ++i, ++line_number) {
      std::string_view line;
      do {  // an empty line is none
        if (at >= bytes.size()) refuse_ply(name, Message::of("it ends before all its elements have come"));
        const std::size_t end = std::min(bytes.find('\n', at), bytes.size());
        line = std::string_view(bytes).substr(at, end - at);
        at = end + 1;
      } while (line.find_first_not_of(" \t\r") == std::string_view::npos);
      for (const Property& property : element.properties) {
        std::string_view word = next_word(line);
        if (word.empty()) bad(Message::of("a value is missing"));
        if (property.count_size == 0) continue;
        std::uint64_t count = 0;
        const auto [stop, error] = std::from_chars(word.data(), word.data() + word.size(), count);
        if (error != std::errc() || stop != word.data() + word.size())
          bad(Message::of("a list's length is no number"));
        for (; count > 0; --count)
          if (next_word(line).empty()) bad(Message::of("a list is shorter than it says"));
      }
    }
}

std::uint64_t whole_number(const char* from, std::size_t size, bool swap) {
  std::array<unsigned char, 8> raw{};
  std::memcpy(raw.data(), from, size);
  if (swap) std::reverse(raw.begin(), raw.begin() + static_cast<std::ptrdiff_t>(size));
  std::uint64_t number = 0;
  if constexpr (std::endian::native == std::endian::big)
    for (std::size_t k = 0; k < size; ++k) number = number << 8U | raw[k];
  else
    std::memcpy(&number, raw.data(), size);
  return number;
}

void check_bytes(const std::string& bytes, const Header& header, const std::string& name) {
  const bool swap = (header.format == Header::Format::big) == (std::endian::native == std::endian::little);
  std::size_t at = header.end;
  const auto take = [&](std::uint64_t count, std::size_t size) {
    const std::size_t left = bytes.size() - at;
    if (count > left || static_cast<std::size_t>(count) * size > left)  // the product cannot run over
      refuse_ply(name, Message::of("it ends before all its elements have come"));
    at += static_cast<std::size_t>(count) * size;
  };
  for (const Element& element : header.elements) {
    if (element.properties.empty()) continue;
    std::size_t fixed = 0;
    bool lists = false;
    for (const Property& property : element.properties) {
      fixed += property.size;
      lists |= property.count_size > 0;
    }
    if (!lists) {
      take(element.count, fixed);
      continue;
    }
    for (std::uint64_t i = 0; i < element.count; ++i)
      for (const Property& property : element.properties) {
        if (property.count_size == 0) {
          take(1, property.size);
          continue;
        }
        if (!property.whole_count) refuse_ply(name, Message::of("a list's length is no whole number"));
        const std::size_t where = at;
        take(1, property.count_size);
        take(whole_number(bytes.data() + where, property.count_size, swap), property.size);
      }
  }
}

}  // namespace

void check_ply(const std::string& bytes, const std::string& name) {
  const Header header = header_of(bytes, name);
  if (header.format == Header::Format::ascii)
    check_lines(bytes, header, name);
  else
    check_bytes(bytes, header, name);
}

}  // namespace scalpmark::models
