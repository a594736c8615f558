#include "viewer/commands/options.h"

#include <CLI/CLI.hpp>
#include <cstdlib>
#include <sstream>

#include "viewer/words/numbers.h"

namespace scalpmark::viewer {

std::string list_of(const std::vector<std::string>& names) {
  std::string text;
  for (const auto& n : names) text += (text.empty() ? "" : ", ") + n;
  return text;
}

std::vector<std::string> split(const std::string& text, char at) {
  std::vector<std::string> parts;
  std::istringstream in(text);
  for (std::string part; std::getline(in, part, at);) parts.push_back(part);
  return parts;
}

std::optional<int> whole(const std::string& text) {
  if (text.empty() || text.size() > 6) return {};
  const size_t first = text[0] == '-' || text[0] == '+' ? 1 : 0;
  if (first == text.size() || text.find_first_not_of("0123456789", first) != std::string::npos) return {};
  return std::stoi(text);
}

void add_lengths(CLI::App& command) {
  command
      .add_option_function<std::string>(
          "--lengths",
          [](const std::string& text) {
            if (text != "cm" && text != "in")
              throw UsageError("--lengths is \"" + text + "\"; choose cm or in.");
            set_length_unit(text == "in" ? LengthUnit::inch : LengthUnit::centimetre);
          },
          "What lengths are shown in, cm or in; without it, cm")
      ->type_name("UNIT");
}

CoilPlace coil_place(const std::string& option, const std::string& text) {
  if (text == "start") return {text, CoilOn::start};
  if (text == "hotspot") return {text, CoilOn::hotspot};
  if (text == "treatment") return {text, CoilOn::treatment};
  if (const auto spot = split(text, ','); spot.size() == 2) {
    const auto row = whole(spot[0]), column = whole(spot[1]);
    if (row && column && std::abs(*row) <= 1 && std::abs(*column) <= 1)
      return {text, CoilOn::spot, *row, *column};
  }
  throw UsageError(
      option + " is \"" + text +
      "\"; choose start, hotspot, treatment, or a spot of the grid as ROW,COLUMN, each from -1 to 1.");
}

models::Unit unit_named(const std::string& text) {
  if (text == "mm") return models::Unit::millimetre;
  if (text == "cm") return models::Unit::centimetre;
  if (text == "m") return models::Unit::metre;
  if (text == "in") return models::Unit::inch;
  throw UsageError("--unit is \"" + text + "\"; choose mm, cm, m or in.");
}

}  // namespace scalpmark::viewer
