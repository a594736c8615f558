#include "viewer/stage/scene/printed_tape.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <string>

#include "viewer/words/numbers.h"

namespace scalpmark::viewer {

using Eigen::Vector2d;
using Eigen::Vector3d;

namespace {

// Of a tailor's tape, a little narrower, so that more of the skin is seen.
constexpr double half_width_mm = 5.5;
constexpr double long_tick_mm = 2.9, short_tick_mm = 1.7;  // from either edge inward
constexpr double digit_high_mm = 4.6, digit_wide_mm = 2.6, digit_gap_mm = 0.9;
constexpr double over_skin_mm = 1.2;
constexpr double corner_mm = 2.5;  // between corners of the band

using Stroke = std::vector<Vector2d>;

/// A digit's strokes in a box 1 wide and 1 high, x along the tape.
const std::vector<Stroke>& strokes_of(char digit) {
  static const std::array<std::vector<Stroke>, 10> all{{
      {{{0.2, 0}, {0.8, 0}, {1, 0.25}, {1, 0.75}, {0.8, 1}, {0.2, 1}, {0, 0.75}, {0, 0.25}, {0.2, 0}}},
      {{{0.15, 0.75}, {0.55, 1}, {0.55, 0}}},
      {{{0, 0.78}, {0.2, 1}, {0.8, 1}, {1, 0.78}, {0.95, 0.55}, {0, 0}, {1, 0}}},
      {{{0, 0.9}, {0.2, 1}, {0.8, 1}, {1, 0.77}, {0.75, 0.54}, {0.4, 0.54}},
       {{0.75, 0.54}, {1, 0.28}, {0.8, 0}, {0.2, 0}, {0, 0.12}}},
      {{{0.75, 0}, {0.75, 1}, {0, 0.3}, {1, 0.3}}},
      {{{0.95, 1}, {0.1, 1}, {0.05, 0.56}, {0.75, 0.6}, {1, 0.32}, {0.8, 0}, {0.2, 0}, {0, 0.12}}},
      {{{0.85, 1},
        {0.3, 0.85},
        {0, 0.35},
        {0.2, 0},
        {0.8, 0},
        {1, 0.3},
        {0.8, 0.55},
        {0.25, 0.55},
        {0, 0.35}}},
      {{{0, 1}, {1, 1}, {0.4, 0}}},
      {{{0.25, 0.53},
        {0.05, 0.77},
        {0.25, 1},
        {0.75, 1},
        {0.95, 0.77},
        {0.75, 0.53},
        {0.25, 0.53},
        {0, 0.26},
        {0.2, 0},
        {0.8, 0},
        {1, 0.26},
        {0.75, 0.53}}},
      {{{0.15, 0},
        {0.7, 0.15},
        {1, 0.65},
        {0.8, 1},
        {0.2, 1},
        {0, 0.7},
        {0.2, 0.45},
        {0.75, 0.45},
        {1, 0.65}}},
  }};
  return all[static_cast<std::size_t>(digit - '0')];
}

/// The band's middle by length along it.
class Course {
public:
  Course(const std::vector<Vector3d>& line, const std::vector<Vector3d>& normals) {
    double along = 0;
    for (std::size_t i = 0; i < line.size(); ++i) {
      const double step = i > 0 ? (line[i] - line[i - 1]).norm() : 0;
      if (i > 0 && step < 1e-6) continue;
      along += step;
      add(along, line[i], normals[i]);
    }
    if (at_.size() < 2) return;
    const Vector3d way = (at_.back() - at_[at_.size() - 2]).normalized();
    add(along + tail_mm, at_.back() + tail_mm * way, normals_.back());
  }

  [[nodiscard]] bool is_there() const { return at_.size() >= 2; }
  [[nodiscard]] double end_mm() const { return along_.back(); }

  struct Frame {
    Vector3d at, along, across;
  };
  [[nodiscard]] Frame frame(double mm) const {
    const auto found = std::upper_bound(along_.begin(), along_.end(), mm);
    const std::size_t next =
        std::clamp<std::size_t>(static_cast<std::size_t>(found - along_.begin()), 1, along_.size() - 1);
    const double share = (mm - along_[next - 1]) / (along_[next] - along_[next - 1]);
    const Vector3d way = at_[next] - at_[next - 1];
    const Vector3d normal = normals_[next - 1] + share * (normals_[next] - normals_[next - 1]);
    return {at_[next - 1] + share * way, way.normalized(), normal.cross(way).normalized()};
  }
  /// A place on the band: so far along, so far to the left of its middle.
  [[nodiscard]] Vector3d at(double mm, double left_mm) const {
    const Frame f = frame(std::clamp(mm, 0.0, end_mm()));
    return f.at + left_mm * f.across;
  }

private:
  void add(double along, const Vector3d& at, const Vector3d& normal) {
    along_.push_back(along);
    at_.push_back(at);
    normals_.push_back(normal);
  }

  std::vector<double> along_;
  std::vector<Vector3d> at_, normals_;
};

void print_number(const Course& course, double mm, int number, Ribbon& tape) {
  const std::string digits = std::to_string(number);
  const double wide = static_cast<double>(digits.size()) * (digit_wide_mm + digit_gap_mm) - digit_gap_mm;
  double from = mm - wide / 2;
  for (const char digit : digits) {
    for (const Stroke& stroke : strokes_of(digit)) {
      std::vector<Vector3d> line;
      line.reserve(stroke.size());
      for (const Vector2d& p : stroke)
        line.push_back(course.at(from + digit_wide_mm * p.x(), digit_high_mm * (p.y() - 0.5)));
      tape.print.push_back(std::move(line));
    }
    from += digit_wide_mm + digit_gap_mm;
  }
}

void print_tick(const Course& course, double mm, double long_mm, Ribbon& tape) {
  for (const double side : {-1.0, 1.0})
    tape.print.push_back(
        {course.at(mm, side * half_width_mm), course.at(mm, side * (half_width_mm - long_mm))});
}

}  // namespace

Ribbon printed_tape(const std::vector<Vector3d>& line, const std::vector<Vector3d>& normals) {
  Ribbon tape;
  tape.half_mm = half_width_mm;
  tape.role = Role::tape_ground;
  tape.rim = Role::text;
  tape.print_px = 1.9;
  tape.lift_mm = over_skin_mm;
  const Course course(line, normals);
  if (!course.is_there()) return tape;
  const int pieces = std::max(1, static_cast<int>(std::ceil(course.end_mm() / corner_mm)));
  for (int i = 0; i <= pieces; ++i) {
    const auto frame = course.frame(course.end_mm() * i / pieces);
    tape.points.push_back(frame.at);
    tape.across.push_back(frame.across);
  }
  const bool inches = length_unit() == LengthUnit::inch;
  const int parts = inches ? 4 : 2;
  const double step_mm = tape_tick_mm() / parts;
  for (int i = 0; i * step_mm <= course.end_mm(); ++i) {
    const double mm = i * step_mm;
    print_tick(course, mm, i % parts == 0 ? long_tick_mm : short_tick_mm, tape);
    if (i % parts == 0 && i > 0 && mm + digit_wide_mm < course.end_mm())
      print_number(course, mm, i / parts, tape);
  }
  // Its two ends.
  for (const double mm : {0.0, course.end_mm()})
    tape.print.push_back({course.at(mm, -half_width_mm), course.at(mm, half_width_mm)});
  return tape;
}

}  // namespace scalpmark::viewer
