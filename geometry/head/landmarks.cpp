#include "geometry/head/landmarks.h"

#include <algorithm>
#include <array>
#include <map>

#include "geometry/head/landmark_names.h"
#include "geometry/head/vertex.h"

namespace scalpmark::geometry {

namespace {

constexpr int midline_column = 10;

/// The tapes of the construction, laid when first asked for: a plan needs a dozen, the 10-5 system all.
class Lattice {
public:
  explicit Lattice(const Head& head) : head_(head) {}

  [[nodiscard]] SectionPoint at(const LatticeName& n) {
    if (n.column == midline_column) return midline(n.row);
    if (n.row == 10) return head_.vertex_tapes().coronal.at(coronal_fraction(n.column));
    const bool left = n.column < midline_column;
    const int step = left ? n.column : 2 * midline_column - n.column;
    if (step <= 2) {
      // The rows nearest the ends share a contour; their position along it is told by the label (1 or 1h).
      const bool halved = n.name.back() == 'h' && n.name.find('1') != std::string::npos;
      const bool halved_right = n.name.back() == 'h' && n.name.find('2') != std::string::npos;
      int along = n.row;
      if (n.row <= 2) along = halved || halved_right ? 1 : 2;
      if (n.row >= 18) along = halved || halved_right ? 19 : 18;
      return contour(step, left).at(along * 0.05);
    }
    const Row& r = row(n.row);
    const double half = left ? r.middle : 1 - r.middle;
    const double eighths = (step - 2) / 8.0;
    return r.tape.at(left ? half * eighths : 1 - half * eighths);
  }

private:
  struct Row {
    Tape tape;
    double middle;  ///< fraction at the midline
  };

  [[nodiscard]] SectionPoint midline(int row) const { return head_.vertex_tapes().midline.at(row * 0.05); }

  /// Along the tape from left to right tragus: 0, 5, 10 ... 100 %.
  [[nodiscard]] static double coronal_fraction(int column) { return column * 0.05; }

  [[nodiscard]] const Tape& contour(int level, bool left) {
    const auto key = std::make_pair(level, left);
    auto found = contours_.find(key);
    if (found == contours_.end()) {
      // Level 0 runs Nz-T9-Iz, level 1 NFpz-T9h-OIz, level 2 Fpz-T7-Oz.
      const auto beside = head_.vertex_tapes().coronal.at(left ? level * 0.05 : 1 - level * 0.05);
      found = contours_
                  .emplace(key, Tape::over(head_.skin(), midline(level).on_skin, beside.on_skin,
                                           midline(20 - level).on_skin))
                  .first;
    }
    return found->second;
  }

  [[nodiscard]] const Row& row(int index) {
    auto found = rows_.find(index);
    if (found == rows_.end()) {
      const SectionPoint top = midline(index);
      Tape tape = Tape::over(head_.skin(), contour(2, true).at(index * 0.05).on_skin, top.on_skin,
                             contour(2, false).at(index * 0.05).on_skin);
      const double fraction = tape.fraction_of(top.at);
      found = rows_.emplace(index, Row{std::move(tape), fraction}).first;
    }
    return found->second;
  }

  const Head& head_;
  std::map<std::pair<int, bool>, Tape> contours_;
  std::map<int, Row> rows_;
};

}  // namespace

std::vector<Landmark> landmarks(const Head& head, LandmarkSystem system) {
  Lattice lattice(head);
  std::vector<Landmark> found;
  for (const auto& n : lattice_names())
    if (n.since <= system) {
      const SectionPoint p = lattice.at(n);
      found.push_back({n.name, p.on_skin, p.at});
    }
  return found;
}

std::optional<Landmark> landmark(const Head& head, std::string_view label) {
  const auto name = canonical_label(label);
  if (!name) return {};
  Lattice lattice(head);
  for (const auto& n : lattice_names())
    if (n.name == *name) {
      const SectionPoint p = lattice.at(n);
      return Landmark{n.name, p.on_skin, p.at};
    }
  return {};
}

const Landmark* find(const std::vector<Landmark>& all, std::string_view name) {
  const auto found = std::find_if(all.begin(), all.end(), [&](const Landmark& l) { return l.name == name; });
  return found == all.end() ? nullptr : &*found;
}

}  // namespace scalpmark::geometry
