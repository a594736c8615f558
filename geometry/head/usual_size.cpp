#include "geometry/head/usual_size.h"

#include <Eigen/Dense>
#include <algorithm>
#include <array>
#include <cmath>

#include "geometry/base/text.h"
#include "geometry/head/vertex.h"

namespace scalpmark::geometry {

using Eigen::Matrix3d;
using Eigen::Vector3d;

namespace {

// ---- What is usual ----

/// Of men and women, mm: length, breadth (large anthropometric surveys, memory), height from tragus to vertex
/// (the same, memory).
struct Survey {
  double men, men_sd, women, women_sd;

  /// Men and women in one.
  [[nodiscard]] double mean() const { return 0.5 * (men + women); }
  [[nodiscard]] double sd() const {
    return std::sqrt(0.5 * (men_sd * men_sd + women_sd * women_sd) + 0.25 * (men - women) * (men - women));
  }
  [[nodiscard]] double least() const { return std::min(men - 3 * men_sd, women - 3 * women_sd); }
  [[nodiscard]] double most() const { return std::max(men + 3 * men_sd, women + 3 * women_sd); }
};
constexpr std::array<Survey, 3> surveys{{{199, 7, 189, 7}, {154, 5, 147, 5}, {131, 6, 126, 6}}};

Vector3d usual() {
  return {surveys[0].mean(), surveys[1].mean(), surveys[2].mean()};
}
Vector3d spread() {
  return {surveys[0].sd(), surveys[1].sd(), surveys[2].sd()};
}

/// How far from usual, in standard deviations over all three.
double oddness(const Vector3d& size) {
  return (size - usual()).cwiseQuotient(spread()).norm();
}

// ---- Tapes of a size ----

/// Around an ellipse, from its semi-axes (Ramanujan 1914; a head's within a thousandth of a millimetre).
double around(double a, double b) {
  const double h = (a - b) * (a - b) / ((a + b) * (a + b));
  return M_PI * (a + b) * (1 + 3 * h / (10 + std::sqrt(4 - 3 * h)));
}

/// Nasion-inion, tragus-tragus and circumference of an ellipsoid of this length, breadth and height.
Vector3d ellipse_tapes(const Vector3d& size) {
  const double length = size[0] / 2, breadth = size[1] / 2, height = size[2];
  return {around(length, height) / 2, around(breadth, height) / 2, around(length, breadth)};
}

using Given = std::array<std::optional<double>, 3>;

Given given_of(const MeasuredTapes& tapes) {
  return {tapes.nasion_inion_mm, tapes.tragus_tragus_mm, tapes.circumference_mm};
}

std::ptrdiff_t count_of(const Given& tapes) {
  return std::count_if(tapes.begin(), tapes.end(), [](const auto& tape) { return tape.has_value(); });
}

/// What turns an ellipsoid's tapes into this head's.
Vector3d tapes_to_ellipses(const Head& head) {
  const HeadSize own = size_of(head);
  const TapeMeasures& t = head.tapes();
  return Vector3d(t.nasion_inion_mm, t.tragus_tragus_mm, t.circumference_mm)
      .cwiseQuotient(ellipse_tapes({own.length_mm, own.breadth_mm, own.height_mm}));
}

/// The most usual size whose tapes are those given: least oddness, by Newton on the Lagrangian. Empty where
/// it does not settle.
std::optional<Vector3d> most_usual(const Given& tapes, const Vector3d& of_ellipse) {
  std::vector<int> which;
  for (int i = 0; i < 3; ++i)
    if (tapes[static_cast<size_t>(i)]) which.push_back(i);
  const auto count = static_cast<Eigen::Index>(which.size());
  Vector3d size = usual();
  for (int turn = 0; turn < 30; ++turn) {
    const Vector3d now = of_ellipse.cwiseProduct(ellipse_tapes(size));
    constexpr double nudge_mm = 1e-3;
    Matrix3d slope;
    for (int k = 0; k < 3; ++k)
      slope.col(k) =
          (of_ellipse.cwiseProduct(ellipse_tapes(size + nudge_mm * Vector3d::Unit(k))) - now) / nudge_mm;
    Eigen::MatrixXd system = Eigen::MatrixXd::Zero(3 + count, 3 + count);
    Eigen::VectorXd right = Eigen::VectorXd::Zero(3 + count);
    for (int k = 0; k < 3; ++k) {
      const double weight = 1 / (spread()[k] * spread()[k]);
      system(k, k) = weight;
      right[k] = weight * (usual()[k] - size[k]);
    }
    for (Eigen::Index i = 0; i < count; ++i) {
      const int tape = which[static_cast<size_t>(i)];
      system.block<1, 3>(3 + i, 0) = slope.row(tape);
      system.block<3, 1>(0, 3 + i) = slope.row(tape).transpose();
      right[3 + i] = *tapes[static_cast<size_t>(tape)] - now[tape];
    }
    Vector3d change = system.fullPivLu().solve(right).head<3>();
    change *= std::min(1.0, 20 / std::max(1e-12, change.cwiseAbs().maxCoeff()));
    size += change;
    if (!size.allFinite() || size.minCoeff() < 20) return std::nullopt;
    if (change.norm() < 1e-4) return size;
  }
  return std::nullopt;
}

// ---- Words ----

/// What is furthest from usual; empty where nothing is outside.
std::optional<Message> unusual(const Vector3d& size) {
  int worst = -1;
  double furthest = 0;
  for (int k = 0; k < 3; ++k) {
    const Survey& survey = surveys[static_cast<size_t>(k)];
    const double off = std::abs(size[k] - survey.mean()) / survey.sd();
    if ((size[k] < survey.least() || size[k] > survey.most()) && off > furthest) {
      furthest = off;
      worst = k;
    }
  }
  if (worst < 0) return std::nullopt;
  const bool small = size[worst] < surveys[static_cast<size_t>(worst)].mean();
  const Number cm = number(size[worst] / 10);
  switch (worst) {
    case 0:
      return small ? Message::of("The head would be %1 cm long, shorter than nearly all adults'", cm)
                   : Message::of("The head would be %1 cm long, longer than nearly all adults'", cm);
    case 1:
      return small ? Message::of("The head would be %1 cm wide, narrower than nearly all adults'", cm)
                   : Message::of("The head would be %1 cm wide, wider than nearly all adults'", cm);
    default:
      return small ? Message::of("The head would be %1 cm high above the ears, lower than nearly all adults'",
                                 cm)
                   : Message::of(
                         "The head would be %1 cm high above the ears, higher than nearly all adults'", cm);
  }
}

/// The tapes without each of which the head is as usual as nearly all; the one that makes it most usual
/// first.
std::vector<TapeAgain> any_of_these(const Head& head, const MeasuredTapes& entered) {
  const Given given = given_of(entered);
  const Vector3d of_ellipse = tapes_to_ellipses(head);
  std::vector<std::pair<double, TapeAgain>> all;
  for (size_t i = 0; i < 3; ++i) {
    if (!given[i]) continue;
    Given others = given;
    others[i].reset();
    const auto without = most_usual(others, of_ellipse);
    if (!without || unusual(*without)) continue;
    TapeAgain again{static_cast<TapeKind>(i), {}};
    if (count_of(given) > 1)
      again.about_mm = of_ellipse.cwiseProduct(ellipse_tapes(*without))[static_cast<Eigen::Index>(i)];
    all.emplace_back(oddness(*without), again);
  }
  std::sort(all.begin(), all.end(), [](const auto& a, const auto& b) { return a.first < b.first; });
  std::vector<TapeAgain> sorted;
  for (const auto& [unused, again] : all) sorted.push_back(again);
  return sorted;
}

}  // namespace

HeadSize size_of(const Head& head) {
  const HeadAxes& axes = head.axes();
  const VertexTapes& tapes = head.vertex_tapes();
  const auto midline = tapes.midline.line();
  const auto foremost = std::max_element(
      midline.begin(), midline.end(),
      [&](const Vector3d& a, const Vector3d& b) { return a.dot(axes.front) < b.dot(axes.front); });
  HeadSize size;
  for (const Vector3d& p : midline) size.length_mm = std::max(size.length_mm, (p - *foremost).norm());
  double left = 0, right = 0;
  for (const auto& line : {tapes.coronal.line(), side_tape(head.skin(), tapes, true).line(),
                           side_tape(head.skin(), tapes, false).line()})
    for (const Vector3d& p : line) {
      const double x = (p - axes.origin).dot(axes.right);
      left = std::min(left, x);
      right = std::max(right, x);
    }
  size.breadth_mm = right - left;
  size.height_mm = (head.skin().position(head.vertex()) - axes.origin).dot(axes.up);
  return size;
}

std::optional<TapeAgain> tape_to_take_again(const Head& head, const MeasuredTapes& entered) {
  const auto all = any_of_these(head, entered);
  return all.empty() ? std::nullopt : std::optional(all.front());
}

std::optional<SizeCaution> size_caution(const Head& head, const MeasuredTapes& entered) {
  const Given given = given_of(entered);
  const auto count = count_of(given);
  if (count == 0) return std::nullopt;
  const auto size = most_usual(given, tapes_to_ellipses(head));
  if (!size) return std::nullopt;
  const auto what = unusual(*size);
  if (!what) return std::nullopt;
  const auto again = any_of_these(head, entered);
  const auto name = [&](size_t i) { return in_words(again[i].tape); };
  const auto cm = [&](size_t i) { return number(*again[i].about_mm / 10); };
  if (again.empty() || static_cast<std::ptrdiff_t>(again.size()) == count)
    return SizeCaution{count == 1 ? Message::of("%1: measure the %2 tape again.", *what,
                                                in_words(static_cast<TapeKind>(given[0]   ? 0
                                                                               : given[1] ? 1
                                                                                          : 2)))
                                  : Message::of("%1: measure all tapes again.", *what),
                       {}};
  if (again.size() == 2)
    return SizeCaution{
        Message::of("%1; a %2 tape of about %3 cm or a %4 tape of about %5 cm would fit the others: "
                    "measure both again.",
                    *what, name(0), cm(0), name(1), cm(1)),
        again.front()};
  return SizeCaution{
      count == 2 ? Message::of("%1; a %2 tape of about %3 cm would fit the other: measure it again.", *what,
                               name(0), cm(0))
                 : Message::of("%1; a %2 tape of about %3 cm would fit the other two: measure it again.",
                               *what, name(0), cm(0)),
      again.front()};
}

Message in_words(TapeKind tape) {
  switch (tape) {
    case TapeKind::nasion_inion:
      return Message::of("nasion-inion");
    case TapeKind::tragus_tragus:
      return Message::of("tragus-tragus");
    default:
      return Message::of("circumference");
  }
}

}  // namespace scalpmark::geometry
