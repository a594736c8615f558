#include "geometry/head/usual_size.h"

#include <Eigen/Dense>
#include <algorithm>
#include <array>
#include <cmath>
#include <vector>

#include "geometry/base/text.h"
#include "geometry/head/ellipse_tapes.h"
#include "geometry/head/vertex.h"

namespace scalpmark::geometry {

using Eigen::Matrix3d;
using Eigen::Vector3d;

namespace {

// ---- What is usual ----

/// Of men and women, mm (large anthropometric surveys, memory).
struct Survey {
  double men, men_sd, women, women_sd;

  /// Men and women in one.
  [[nodiscard]] double mean() const { return 0.5 * (men + women); }
  [[nodiscard]] double sd() const {
    return std::sqrt(0.5 * (men_sd * men_sd + women_sd * women_sd) + 0.25 * (men - women) * (men - women));
  }
};
/// Length, breadth, height from tragus to vertex, by callipers.
constexpr std::array<Survey, 3> sizes{{{199, 7, 189, 7}, {154, 5, 147, 5}, {131, 6, 126, 6}}};
Vector3d spread() {
  return {sizes[0].sd(), sizes[1].sd(), sizes[2].sd()};
}
/// Nasion to inion, tragus to tragus, circumference, by tape over hair. Callipers read less than such tapes
/// would make of a head, so what is usual is taken from the tapes, and from callipers only how much people
/// differ.
const Vector3d usual_tapes{360, 0.5 * (352 + 341), 0.5 * (574 + 561)};

/// How far off tapes of an honest hand are, one standard deviation, mm: two points felt for to 4 mm each and
/// a reading of 1.4 (the default errors, plan/hand_errors.h); around the head a reading over hair of 2.5
/// (ours, no source).
Vector3d by_hand() {
  const double between_points = std::sqrt(2 * 4.0 * 4.0 + 1.4 * 1.4);
  return {between_points, between_points, 2.5};
}
/// A size is worth a word outside so many standard deviations of the surveys, widened by so many of what
/// hands add: nobody that a survey would count is sent to measure again for what 95 of 100 hands do.
constexpr double survey_deviations = 3, hand_deviations = 2;

// ---- Tapes of a size ----

using Given = std::array<std::optional<double>, 3>;

Given given_of(const MeasuredTapes& tapes) {
  return {tapes.nasion_inion_mm, tapes.tragus_tragus_mm, tapes.circumference_mm};
}

std::vector<int> which_of(const Given& tapes) {
  std::vector<int> which;
  for (int i = 0; i < 3; ++i)
    if (tapes[static_cast<size_t>(i)]) which.push_back(i);
  return which;
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

/// What tapes say of a head that is a little off usual.
class UsualHead {
public:
  /// `head`: whose shape it has.
  explicit UsualHead(const Head& head) : of_ellipse_(tapes_to_ellipses(head)) {
    usual_ = most_usual({usual_tapes[0], usual_tapes[1], usual_tapes[2]}).value_or(usual_);
    slope_ = slope_at(usual_);
  }

  /// The size that usual tapes make.
  [[nodiscard]] const Vector3d& size() const { return usual_; }

  [[nodiscard]] Vector3d tapes_of(const Vector3d& size) const {
    return of_ellipse_.cwiseProduct(ellipse_tapes(size));
  }
  /// How the given tapes of honest hands spread over adults, mm2.
  [[nodiscard]] Eigen::MatrixXd spread_of_tapes(const std::vector<int>& given) const {
    const Matrix3d all =
        slope_ * adults() * slope_.transpose() + Matrix3d(by_hand().cwiseAbs2().asDiagonal());
    return all(given, given);
  }
  /// How far from usual the sizes that such tapes make (most_usual) may be, mm.
  [[nodiscard]] Vector3d usual_within(const std::vector<int>& given) const {
    const Eigen::MatrixXd rows = slope_(given, Eigen::all);
    const Eigen::MatrixXd by_people = rows * adults() * rows.transpose();
    const Eigen::MatrixXd size_of_tapes = adults() * rows.transpose() * by_people.inverse();
    const auto of_sizes = [&](const Eigen::MatrixXd& of_tapes) -> Vector3d {
      return (size_of_tapes * of_tapes * size_of_tapes.transpose()).diagonal();
    };
    return (survey_deviations * survey_deviations * of_sizes(by_people) +
            hand_deviations * hand_deviations * of_sizes(spread_of_tapes(given) - by_people))
        .cwiseSqrt();
  }
  /// How far the given tapes are from those of a usual head, squared, in standard deviations over all of
  /// them.
  [[nodiscard]] double oddness(const Given& tapes) const {
    const std::vector<int> given = which_of(tapes);
    Eigen::VectorXd off(static_cast<Eigen::Index>(given.size()));
    for (size_t i = 0; i < given.size(); ++i)
      off[static_cast<Eigen::Index>(i)] = *tapes[static_cast<size_t>(given[i])] - usual_tapes[given[i]];
    return off.dot(spread_of_tapes(given).ldlt().solve(off));
  }
  /// Whether one of the tapes is off what the others say of it, people being as they are and hands as they
  /// are.
  [[nodiscard]] bool tells_one_off(const Given& tapes) const {
    for (const int i : which_of(tapes)) {
      Given others = tapes;
      others[static_cast<size_t>(i)].reset();
      if (which_of(others).empty()) return false;
      if (oddness(tapes) - oddness(others) > survey_deviations * survey_deviations) return true;
    }
    return false;
  }
  [[nodiscard]] std::optional<Vector3d> most_usual(const Given& tapes) const;

private:
  static Matrix3d adults() { return spread().cwiseAbs2().asDiagonal(); }
  [[nodiscard]] Matrix3d slope_at(const Vector3d& size) const {
    constexpr double nudge_mm = 1e-3;
    Matrix3d slope;
    for (int k = 0; k < 3; ++k)
      slope.col(k) = (tapes_of(size + nudge_mm * Vector3d::Unit(k)) - tapes_of(size)) / nudge_mm;
    return slope;
  }

  Vector3d of_ellipse_;
  Vector3d usual_{194, 150, 130};  ///< at first about where to look
  Matrix3d slope_;                 ///< of tapes by size, at the usual one
};

/// The most usual size whose tapes are those given, by Newton on the Lagrangian. Empty where it does not
/// settle.
std::optional<Vector3d> UsualHead::most_usual(const Given& tapes) const {
  const std::vector<int> which = which_of(tapes);
  const auto count = static_cast<Eigen::Index>(which.size());
  Vector3d size = usual_;
  for (int turn = 0; turn < 30; ++turn) {
    const Vector3d now = tapes_of(size);
    const Matrix3d slope = slope_at(size);
    Eigen::MatrixXd system = Eigen::MatrixXd::Zero(3 + count, 3 + count);
    Eigen::VectorXd right = Eigen::VectorXd::Zero(3 + count);
    for (int k = 0; k < 3; ++k) {
      const double weight = 1 / (spread()[k] * spread()[k]);
      system(k, k) = weight;
      right[k] = weight * (usual_[k] - size[k]);
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

/// What of a head that given tapes make is furthest from usual; empty where nothing is outside.
std::optional<Message> unusual(const UsualHead& usual, const Vector3d& size, const std::vector<int>& given) {
  int worst = 0;
  constexpr double nothing_mm = 1e-6;  // a size that these tapes say nothing of is not off
  const Vector3d off = (size - usual.size()).cwiseQuotient(usual.usual_within(given).cwiseMax(nothing_mm));
  if (!(off.cwiseAbs().maxCoeff(&worst) > 1)) return std::nullopt;
  const bool small = off[worst] < 0;
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

/// The tapes without each of which the others are as usual as nearly all adults', the most usual first. One
/// that leaves the others far less usual than the first does is not the one that was misread.
std::vector<TapeAgain> any_of_these(const UsualHead& head, const Given& given) {
  constexpr double much_odder = 4;  // in oddness: e^-2 as likely
  std::vector<std::pair<double, TapeAgain>> all;
  for (size_t i = 0; i < 3; ++i) {
    if (!given[i]) continue;
    Given others = given;
    others[i].reset();
    const auto without = head.most_usual(others);
    if (!without || (count_of(others) > 0 && unusual(head, *without, which_of(others)))) continue;
    TapeAgain again{static_cast<TapeKind>(i), {}};
    if (count_of(others) > 0) again.about_mm = head.tapes_of(*without)[static_cast<Eigen::Index>(i)];
    all.emplace_back(count_of(others) > 0 ? head.oddness(others) : 0.0, again);
  }
  std::sort(all.begin(), all.end(), [](const auto& a, const auto& b) { return a.first < b.first; });
  std::vector<TapeAgain> sorted;
  for (const auto& [odd, again] : all)
    if (odd <= all.front().first + much_odder) sorted.push_back(again);
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
  const auto all = any_of_these(UsualHead(head), given_of(entered));
  return all.empty() ? std::nullopt : std::optional(all.front());
}

std::optional<SizeCaution> size_caution(const Head& head, const MeasuredTapes& entered) {
  const Given given = given_of(entered);
  const auto count = count_of(given);
  if (count == 0) return std::nullopt;
  const UsualHead usual_head(head);
  const auto size = usual_head.most_usual(given);
  if (!size) return std::nullopt;
  auto what = unusual(usual_head, *size, which_of(given));
  if (!what && usual_head.tells_one_off(given))
    what = Message::of("Hardly any adult's head has these lengths together");
  if (!what) return std::nullopt;
  const auto again = any_of_these(usual_head, given);
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
