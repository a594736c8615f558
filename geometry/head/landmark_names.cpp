#include "geometry/head/landmark_names.h"

#include <algorithm>
#include <cctype>
#include <set>
#include <string_view>

namespace scalpmark::geometry {

namespace {

constexpr int rows = 21, middle = 10;

/// Row prefixes: near the ears (columns 9 to 7h) and over the top (5 to the midline).
struct RowPrefix {
  const char* side;
  const char* top;
};
constexpr std::array<RowPrefix, rows> prefixes{
    {{"N", "N"},   {"NFp", "NFp"}, {"Fp", "Fp"}, {"AFp", "AFp"}, {"AF", "AF"}, {"AFF", "AFF"},
     {"F", "F"},   {"FFT", "FFC"}, {"FT", "FC"}, {"FTT", "FCC"}, {"T", "C"},   {"TTP", "CCP"},
     {"TP", "CP"}, {"TPP", "CPP"}, {"P", "P"},   {"PPO", "PPO"}, {"PO", "PO"}, {"POO", "POO"},
     {"O", "O"},   {"OI", "OI"},   {"I", "I"}}};
/// Column numbers on the left, outermost first; the right side has the next even number.
constexpr std::array<const char*, middle> left_columns{"9", "9h", "7", "7h", "5", "5h", "3", "3h", "1", "1h"};
constexpr std::array<const char*, middle> right_columns{"10", "10h", "8",  "8h", "6",
                                                        "6h", "4",   "4h", "2",  "2h"};

const std::set<std::string_view>& ten_twenty_names() {
  static const std::set<std::string_view> names{"Nz", "Fp1", "Fpz", "Fp2", "F7", "F3", "Fz", "F4",
                                                "F8", "T7",  "C3",  "Cz",  "C4", "T8", "P7", "P3",
                                                "Pz", "P4",  "P8",  "O1",  "Oz", "O2", "Iz"};
  return names;
}

LandmarkSystem since(const std::string& name, int row, int column) {
  if (ten_twenty_names().contains(name)) return LandmarkSystem::ten_twenty;
  // The 10-10 system: every second row from Fpz to Oz, whole-number columns from 7 up; the rows next to the
  // ends (AF, PO) carry only 3 and 4 beside their ends and middle, Fp and O only 1 and 2.
  const int from_middle = std::abs(column - middle);
  if (row < 2 || row > 18 || row % 2 != 0 || from_middle % 2 != 0 || from_middle > 8 || name.back() == 'h')
    return LandmarkSystem::ten_five;
  if ((row == 4 || row == 16) && (from_middle == 2 || from_middle == 6)) return LandmarkSystem::ten_five;
  return LandmarkSystem::ten_ten;
}

std::vector<LatticeName> make_names() {
  std::vector<LatticeName> names;
  const auto add = [&](std::string name, int row, int column) {
    const auto system = since(name, row, column);
    names.push_back({std::move(name), row, column, system});
  };
  for (int row = 0; row < rows; ++row) {
    const RowPrefix prefix = prefixes[static_cast<size_t>(row)];
    // The rows nearest the ends lie on the three contours alone: two positions a side.
    const bool on_contour = row <= 2 || row >= 18;
    const auto name = [&](int step, bool left) {
      const auto number =
          left ? left_columns[static_cast<size_t>(step)] : right_columns[static_cast<size_t>(step)];
      return std::string(step < 4 ? prefix.side : prefix.top) + number;
    };
    const int contour = row == 0 || row == 20 ? 0 : row == 1 || row == 19 ? 1 : 2;
    if (on_contour) {
      add(std::string(prefix.top) + "1", row, contour);
      add(std::string(prefix.top) + "1h", row, contour);
    } else {
      for (int step = 0; step < middle; ++step) add(name(step, true), row, step);
    }
    add(std::string(prefix.top) + "z", row, middle);
    if (on_contour) {
      add(std::string(prefix.top) + "2h", row, 2 * middle - contour);
      add(std::string(prefix.top) + "2", row, 2 * middle - contour);
    } else {
      for (int step = middle - 1; step >= 0; --step) add(name(step, false), row, 2 * middle - step);
    }
  }
  return names;
}

}  // namespace

const std::vector<LatticeName>& lattice_names() {
  static const std::vector<LatticeName> names = make_names();
  return names;
}

const std::string& lattice_name(int row, int column) {
  for (const auto& n : lattice_names())
    if (n.row == row && n.column == column) return n.name;
  static const std::string none;
  return none;
}

const std::vector<std::string>& landmark_labels(LandmarkSystem system) {
  static const auto make = [](LandmarkSystem wanted) {
    std::vector<std::string> labels;
    for (const auto& n : lattice_names())
      if (n.since <= wanted) labels.push_back(n.name);
    return labels;
  };
  static const std::array<std::vector<std::string>, 3> labels{
      make(LandmarkSystem::ten_twenty), make(LandmarkSystem::ten_ten), make(LandmarkSystem::ten_five)};
  return labels[static_cast<size_t>(system)];
}

std::optional<std::string> canonical_label(std::string_view label) {
  const auto same = [](std::string_view a, std::string_view b) {
    return std::equal(a.begin(), a.end(), b.begin(), b.end(),
                      [](unsigned char x, unsigned char y) { return std::tolower(x) == std::tolower(y); });
  };
  constexpr std::array<std::array<std::string_view, 2>, 4> older{
      {{"T3", "T7"}, {"T4", "T8"}, {"T5", "P7"}, {"T6", "P8"}}};
  for (const auto& [old_label, new_label] : older)
    if (same(label, old_label)) return std::string(new_label);
  for (const auto& n : lattice_names())
    if (same(label, n.name)) return n.name;
  return {};
}

std::string label_on_side(const std::string& label, Side side) {
  const auto canonical = canonical_label(label);
  if (!canonical) return label;
  // Names of a row run left to right, so mirror images stand as far from its midline in the list.
  const auto& all = lattice_names();
  size_t at = 0;
  while (all[at].name != *canonical) ++at;
  const bool on_side = side == Side::left ? all[at].column <= middle : all[at].column >= middle;
  if (on_side) return *canonical;
  size_t first = at, last = at;
  while (first > 0 && all[first - 1].row == all[at].row) --first;
  while (last + 1 < all.size() && all[last + 1].row == all[at].row) ++last;
  return all[first + (last - at)].name;
}

std::optional<Side> side_of_label(const std::string& label) {
  const size_t last = label.find_last_of("0123456789");
  if (last == std::string::npos) return {};
  return (label[last] - '0') % 2 != 0 ? Side::left : Side::right;
}

}  // namespace scalpmark::geometry
