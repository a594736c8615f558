#include "models/files/own_files.h"

#include <array>
#include <cstddef>

#include "models/files/plain_file.h"

namespace scalpmark::models {

namespace {

constexpr std::size_t looked_at = 4096;

/// "format": "scalpmark-...", wherever it stands among the first keys.
std::string json_format(std::string_view bytes) {
  constexpr std::string_view key = "\"format\"", blank = " \t\r\n";
  const auto skip = [&](std::size_t from) { return bytes.find_first_not_of(blank, from); };
  if (const std::size_t first = skip(0); first == std::string_view::npos || bytes[first] != '{') return {};
  std::size_t at = bytes.find(key);
  if (at == std::string_view::npos) return {};
  at = skip(at + key.size());
  if (at == std::string_view::npos || bytes[at] != ':') return {};
  at = skip(at + 1);
  if (at == std::string_view::npos || bytes[at] != '"') return {};
  const std::size_t end = bytes.find('"', at + 1);
  if (end == std::string_view::npos) return {};
  const std::string_view name = bytes.substr(at + 1, end - at - 1);
  return name.starts_with("scalpmark-") ? std::string(name) : std::string();
}

}  // namespace

std::string own_format(std::string_view bytes) {
  bytes = bytes.substr(0, looked_at);
  const auto has = [&](std::string_view text) { return bytes.find(text) != std::string_view::npos; };
  using namespace std::string_view_literals;
  if (bytes.starts_with("\x89PNG\r\n\x1a\n"sv)) return has("Software\0Scalpmark"sv) ? "scalpmark-png" : "";
  // Qt writes a PDF's creator in UTF-16, the higher byte first.
  if (bytes.starts_with("%PDF-"sv)) return has("\0S\0c\0a\0l\0p\0m\0a\0r\0k"sv) ? "scalpmark-pdf" : "";
  if (bytes.starts_with("<!DOCTYPE html>"sv))
    return has("<meta name=\"generator\" content=\"Scalpmark "sv) ? "scalpmark-html" : "";
  if (bytes.starts_with("ply\n"sv)) return has(own_ply_comment) ? "scalpmark-ply" : "";
  // glTF in one file: its heading begins with who made it.
  if (bytes.starts_with("glTF")) return has("\"generator\":\"Scalpmark "sv) ? "scalpmark-glb" : "";
  if (bytes.starts_with("Scalpmark print")) return "scalpmark-stl";
  // A table has no place for a name: its first columns tell.
  for (const std::string_view columns :
       {"date,by,pulse_off_mm,", "visit,date,by,", "visit,at,spot_row,", "file,initials,attempt,"})
    if (bytes.starts_with(columns)) return "scalpmark-csv";
  return json_format(bytes);
}

std::string own_format_of(const std::filesystem::path& file) {
  PlainFile opened(file);
  if (opened.kind() != PlainFile::Kind::plain) return {};
  std::array<char, looked_at> bytes{};
  const auto got = opened.read(bytes.data(), bytes.size());
  if (!got) return {};
  return *got == 0 ? "nothing" : own_format({bytes.data(), *got});
}

}  // namespace scalpmark::models
