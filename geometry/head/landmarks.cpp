#include "geometry/head/landmarks.h"

#include <algorithm>
#include <array>
#include <map>

#include "geometry/head/landmark_names.h"
#include "geometry/head/vertex.h"

namespace scalpmark::geometry {

namespace {

constexpr int midline_column = 10;  // the midline's column

/// The tapes of the construction, laid when first asked for: a plan needs a dozen, the 10-5 system all.
class Lattice {
public:
  /// `mark`: empty for marks right where they belong.
  Lattice(const Surface& skin, const VertexTapes& tapes, MarkOnTape mark = {})
      : skin_(skin), tapes_(tapes), mark_(std::move(mark)) {}

  [[nodiscard]] SectionPoint at(const LatticeName& n) {
    if (n.column == midline_column) return midline(n.row);
    if (n.row == 10) return coronal(n.column);
    const bool left = n.column < midline_column;
    const int step = left ? n.column : 2 * midline_column - n.column;
    if (step <= 2) {
      // The rows nearest the ends share a contour; their position along it is told by the label (1 or 1h).
      const bool halved = n.name.back() == 'h' && n.name.find('1') != std::string::npos;
      const bool halved_right = n.name.back() == 'h' && n.name.find('2') != std::string::npos;
      int along = n.row;
      if (n.row <= 2) along = halved || halved_right ? 1 : 2;
      if (n.row >= 18) along = halved || halved_right ? 19 : 18;
      return marked(n.row, n.column, contour(step, left), along * 0.05);
    }
    const Row& r = row(n.row);
    const double half = left ? r.middle : 1 - r.middle;
    const double eighths = (step - 2) / 8.0;
    return marked(n.row, n.column, r.tape, left ? half * eighths : 1 - half * eighths);
  }

private:
  struct Row {
    Tape tape;
    double middle;  ///< fraction at the midline
  };

  /// The four points and the vertex are there before any tape of the construction is laid.
  [[nodiscard]] SectionPoint marked(int row, int column, const Tape& tape, double share) {
    if (!mark_ || share <= 0 || share >= 1 || (row == 10 && column == midline_column)) return tape.at(share);
    const auto key = std::make_pair(row, column);
    auto found = marked_.find(key);
    if (found == marked_.end())
      found = marked_.emplace(key, mark_(lattice_name(row, column), tape, share)).first;
    return found->second;
  }

  [[nodiscard]] SectionPoint midline(int row) {
    return marked(row, midline_column, tapes_.midline, row * 0.05);
  }

  /// Along the tape from left to right tragus: 0, 5, 10 ... 100 %.
  [[nodiscard]] SectionPoint coronal(int column) { return marked(10, column, tapes_.coronal, column * 0.05); }

  [[nodiscard]] const Tape& contour(int level, bool left) {
    const auto key = std::make_pair(level, left);
    auto found = contours_.find(key);
    if (found == contours_.end()) {
      // Level 0 runs Nz-T9-Iz, level 1 NFpz-T9h-OIz, level 2 Fpz-T7-Oz.
      const auto beside = coronal(left ? level : 2 * midline_column - level);
      found = contours_
                  .emplace(key, Tape::over(skin_, midline(level).on_skin, beside.on_skin,
                                           midline(2 * midline_column - level).on_skin))
                  .first;
    }
    return found->second;
  }

  [[nodiscard]] const Row& row(int index) {
    auto found = rows_.find(index);
    if (found == rows_.end()) {
      const SectionPoint top = midline(index);
      const auto end = [&](bool left) {
        return marked(index, left ? 2 : 2 * midline_column - 2, contour(2, left), index * 0.05).on_skin;
      };
      Tape tape = Tape::over(skin_, end(true), top.on_skin, end(false));
      const double fraction = tape.fraction_of(top.at);
      found = rows_.emplace(index, Row{std::move(tape), fraction}).first;
    }
    return found->second;
  }

  const Surface& skin_;
  const VertexTapes& tapes_;
  MarkOnTape mark_;
  std::map<std::pair<int, int>, SectionPoint> marked_;
  std::map<std::pair<int, bool>, Tape> contours_;
  std::map<int, Row> rows_;
};

std::optional<Landmark> made(Lattice lattice, std::string_view label) {
  const auto name = canonical_label(label);
  if (!name) return {};
  for (const auto& n : lattice_names())
    if (n.name == *name) {
      const SectionPoint p = lattice.at(n);
      return Landmark{n.name, p.on_skin, p.at};
    }
  return {};
}

}  // namespace

std::vector<Landmark> landmarks(const Head& head, LandmarkSystem system) {
  Lattice lattice(head.skin(), head.vertex_tapes());
  std::vector<Landmark> found;
  for (const auto& n : lattice_names())
    if (n.since <= system) {
      const SectionPoint p = lattice.at(n);
      found.push_back({n.name, p.on_skin, p.at});
    }
  return found;
}

std::optional<Landmark> landmark(const Head& head, std::string_view label) {
  return made({head.skin(), head.vertex_tapes()}, label);
}

std::optional<Landmark> landmark(const Surface& skin, const VertexTapes& tapes, std::string_view label,
                                 const MarkOnTape& mark) {
  return made({skin, tapes, mark}, label);
}

const Landmark* find(const std::vector<Landmark>& all, std::string_view name) {
  const auto found = std::find_if(all.begin(), all.end(), [&](const Landmark& l) { return l.name == name; });
  return found == all.end() ? nullptr : &*found;
}

}  // namespace scalpmark::geometry
