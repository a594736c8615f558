#include "viewer/stage/scene/printed_tape.h"

#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>
#include <vector>

#include "viewer/words/numbers.h"

using namespace scalpmark::viewer;
using Eigen::Vector3d;

namespace {

/// A tape along x on a flat skin facing +z.
Ribbon flat_tape(double length_mm) {
  std::vector<Vector3d> line, normals;
  for (double x = 0; x <= length_mm + 1e-9; x += 10) {
    line.emplace_back(x, 0, 0);
    normals.push_back(Vector3d::UnitZ());
  }
  return printed_tape(line, normals);
}

struct PrintedLine {
  double at_mm = 0, long_mm = 0;
};

/// What is printed square across the band from its edge inward; figures and the band's own ends are not.
std::vector<PrintedLine> lines_on(const Ribbon& tape) {
  std::vector<PrintedLine> lines;
  for (const auto& stroke : tape.print) {
    if (stroke.size() != 2 || std::abs(stroke[0].x() - stroke[1].x()) > 1e-6) continue;
    if (std::abs(std::abs(stroke[0].y()) - tape.half_mm) > 1e-6) continue;
    const double length = (stroke[0] - stroke[1]).norm();
    if (length < tape.half_mm) lines.push_back({stroke[0].x(), length});
  }
  return lines;
}

/// Figures begin where strokes are that touch no edge.
int strokes_of_figures(const Ribbon& tape, double from_mm, double to_mm) {
  return static_cast<int>(std::count_if(tape.print.begin(), tape.print.end(), [&](const auto& stroke) {
    return std::all_of(stroke.begin(), stroke.end(), [&](const Vector3d& p) {
      return p.x() > from_mm && p.x() < to_mm && std::abs(p.y()) < 0.5 * tape.half_mm;
    });
  }));
}

}  // namespace

TEST_CASE("a tape in the hand has a line at every half centimetre, a longer one at every whole") {
  const auto lines = lines_on(flat_tape(120));
  for (int half = 0; half <= 24; ++half) {
    const double mm = 5.0 * half;
    std::vector<double> lengths;
    for (const PrintedLine& line : lines)
      if (std::abs(line.at_mm - mm) < 1e-6) lengths.push_back(line.long_mm);
    INFO(mm << " mm");
    REQUIRE(lengths.size() == 2);  // from either edge
    CHECK(lengths[0] == Approx(lengths[1]));
    CHECK((lengths[0] > 2.5) == (half % 2 == 0));
  }
  for (const PrintedLine& line : lines)
    CHECK(std::abs(line.at_mm / 5 - std::round(line.at_mm / 5)) < 1e-6);  // and nothing between them
}

TEST_CASE("each whole centimetre of a tape has its figure, and its zero has none") {
  const Ribbon tape = flat_tape(120);
  CHECK(strokes_of_figures(tape, -1, 5) == 0);
  for (int cm = 1; cm <= 12; ++cm) {
    INFO(cm << " cm");
    CHECK(strokes_of_figures(tape, 10 * cm - 5, 10 * cm + 5) > 0);
  }
  CHECK(strokes_of_figures(tape, 95, 105) > strokes_of_figures(tape, 65, 75));  // two digits and one
  // A figure reads along the tape, upright for who has its zero on the left.
  double lowest = 0, highest = 0;
  for (const auto& stroke : tape.print)
    for (const Vector3d& p : stroke)
      if (p.x() > 66 && p.x() < 74 && std::abs(p.y()) < 2.5) {
        lowest = std::min(lowest, p.y());
        highest = std::max(highest, p.y());
      }
  CHECK(highest - lowest > 3);
}

TEST_CASE("a tape goes on a little beyond the hand, and lies as wide as it is") {
  const Ribbon tape = flat_tape(100);
  CHECK(tape.points.back().x() == Approx(100 + tail_mm));
  for (const Vector3d& across : tape.across) {
    CHECK(across.norm() == Approx(1));
    CHECK(std::abs(across.y()) == Approx(1));
  }
}

TEST_CASE("in inches a tape has a line at every quarter and a figure at every inch") {
  set_length_unit(LengthUnit::inch);
  const Ribbon tape = flat_tape(120);
  set_length_unit(LengthUnit::centimetre);
  for (const PrintedLine& line : lines_on(tape))
    CHECK(std::abs(line.at_mm / 6.35 - std::round(line.at_mm / 6.35)) < 1e-6);
  CHECK(strokes_of_figures(tape, 25.4 - 5, 25.4 + 5) > 0);
  CHECK(strokes_of_figures(tape, 35, 45) == 0);
}

TEST_CASE("a tape that has not been pulled yet shows nothing") {
  CHECK(printed_tape({}, {}).points.empty());
  CHECK(printed_tape({Vector3d::Zero(), Vector3d::Zero()}, {Vector3d::UnitZ(), Vector3d::UnitZ()})
            .points.empty());
}
