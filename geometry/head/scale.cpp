#include "geometry/head/scale.h"

#include <Eigen/Dense>
#include <algorithm>
#include <array>
#include <cmath>

#include "geometry/base/error.h"
#include "geometry/base/ranges.h"
#include "geometry/base/text.h"
#include "geometry/head/stretch.h"
#include "geometry/head/usual_size.h"

namespace scalpmark::geometry {

using Eigen::Vector3d;

namespace {

constexpr double residual_mm = 0.1;  // what is promised
constexpr double settled_mm = 1e-4;  // what Newton is driven to
constexpr double most_out_of_proportion = 0.3;
constexpr int most_steps = 40;

struct Measure {
  Message name;
  std::optional<double> wanted;
  double own;  ///< of the unscaled head
  Range range;
};

std::array<Measure, 3> measures(const Head& head, const MeasuredTapes& m) {
  const TapeMeasures& t = head.tapes();
  return {{{Message::of("nasion-inion"), m.nasion_inion_mm, t.nasion_inion_mm, ranges::nasion_inion_mm},
           {Message::of("tragus-tragus"), m.tragus_tragus_mm, t.tragus_tragus_mm, ranges::tragus_tragus_mm},
           {Message::of("circumference"), m.circumference_mm, t.circumference_mm, ranges::circumference_mm}}};
}

Message cm(double mm) {
  return Message::of("%1 cm", number(mm / 10));
}

void check_ranges(const std::array<Measure, 3>& all) {
  for (const auto& m : all)
    if (m.wanted && !m.range.holds(*m.wanted))
      throw GeometryError(Message::of("The %1 tape reads %2; it must be from %3 to %4. Measure again.",
                                      m.name, cm(*m.wanted), cm(m.range.low), cm(m.range.high)));
}

/// What to do about two tapes that disagree: where three are given, often one of the two is what is wrong.
Message what_to_measure(const Head& head, const MeasuredTapes& measured, size_t i, size_t j) {
  const bool three = measured.nasion_inion_mm && measured.tragus_tragus_mm && measured.circumference_mm;
  const auto again = three ? tape_to_take_again(head, measured) : std::nullopt;
  if (!again || !again->about_mm ||
      (again->tape != static_cast<TapeKind>(i) && again->tape != static_cast<TapeKind>(j)))
    return Message::of("Measure both again.");
  return Message::of("A %1 tape of about %2 would fit the other two: measure it again.",
                     in_words(again->tape), cm(*again->about_mm));
}

/// Two tapes whose ratio no head of this kind has are a slip of the tape, not a head.
void check_proportions(const Head& head, const MeasuredTapes& measured, const std::array<Measure, 3>& all) {
  for (size_t i = 0; i < 3; ++i)
    for (size_t j = i + 1; j < 3; ++j) {
      if (!all[i].wanted || !all[j].wanted) continue;
      const double ratio = (*all[i].wanted / *all[j].wanted) / (all[i].own / all[j].own);
      if (std::max(ratio, 1 / ratio) - 1 > most_out_of_proportion)
        throw GeometryError(Message::of(
            "The %1 tape (%2) and the %3 tape (%4) disagree: their proportion is more than 30 % off a head's. %5",
            all[i].name, cm(*all[i].wanted), all[j].name, cm(*all[j].wanted),
            what_to_measure(head, measured, i, j)));
    }
}

/// The pair of measures whose proportion is furthest from the head's own.
[[noreturn]] void refuse_disagreement(const Head& head, const MeasuredTapes& measured,
                                      const std::array<Measure, 3>& all) {
  std::array<size_t, 2> worst{0, 1};
  double furthest = -1;
  for (size_t i = 0; i < 3; ++i)
    for (size_t j = i + 1; j < 3; ++j) {
      if (!all[i].wanted || !all[j].wanted) continue;
      const double off = std::abs(std::log((*all[i].wanted / *all[j].wanted) / (all[i].own / all[j].own)));
      if (off > furthest) {
        furthest = off;
        worst = {i, j};
      }
    }
  const Measure &a = all[worst[0]], &b = all[worst[1]];
  throw GeometryError(Message::of(
      "No scaling of the head gives these tapes together: the %1 (%2) and the %3 (%4) disagree. %5", a.name,
      cm(a.wanted.value_or(a.own)), b.name, cm(b.wanted.value_or(b.own)),
      what_to_measure(head, measured, worst[0], worst[1])));
}

}  // namespace

ScaledHead scale_to_tapes(const Head& head, const MeasuredTapes& measured) {
  const auto all = measures(head, measured);
  check_ranges(all);
  check_proportions(head, measured, all);
  std::vector<size_t> given;
  for (size_t i = 0; i < 3; ++i)
    if (all[i].wanted) given.push_back(i);
  if (given.empty()) return {head, Vector3d::Ones()};

  // The unknowns are logarithms of the three factors. With fewer tapes than axes, of all the scalings that
  // fit the step with the least change is taken from a uniform start, so an axis no tape speaks for follows
  // the others.
  double uniform = 0;
  for (const size_t i : given)
    uniform += std::log(*all[i].wanted / all[i].own) / static_cast<double>(given.size());
  Vector3d logs = Vector3d::Constant(uniform);
  const auto count = static_cast<Eigen::Index>(given.size());
  const Stretch stretch(head);
  const auto at = [&](const Vector3d& l, const SurfacePoint& guess) {
    return stretch.stretched(l.array().exp(), guess);
  };
  const auto tapes_of = [&](const Head& h) {
    const TapeMeasures& t = h.tapes();
    const std::array<double, 3> all_three{t.nasion_inion_mm, t.tragus_tragus_mm, t.circumference_mm};
    Eigen::VectorXd own(count);
    for (Eigen::Index k = 0; k < count; ++k) own[k] = all_three[given[static_cast<size_t>(k)]];
    return own;
  };
  Eigen::VectorXd wanted(count);
  for (Eigen::Index k = 0; k < count; ++k) wanted[k] = *all[given[static_cast<size_t>(k)]].wanted;

  try {
    Head current = at(logs, head.vertex());
    Eigen::VectorXd off = wanted - tapes_of(current);
    for (int step = 0; step < most_steps && off.cwiseAbs().maxCoeff() > settled_mm; ++step) {
      constexpr double nudge =
          1e-4;  // of a factor: 0.02 mm on a head, large against rounding, small against curvature
      Eigen::MatrixXd slope(count, 3);
      for (int k = 0; k < 3; ++k) {
        Vector3d nudged = logs;
        nudged[k] += nudge;
        slope.col(k) = (tapes_of(at(nudged, current.vertex())) - (wanted - off)) / nudge;
      }
      Vector3d change = slope.completeOrthogonalDecomposition().solve(off);
      // A factor is never changed by more than a fifth at once, so that a bad slope cannot fold the head.
      change *= std::min(1.0, 0.2 / std::max(1e-12, change.cwiseAbs().maxCoeff()));
      logs += change;
      if (logs.cwiseAbs().maxCoeff() > std::log(2.0)) refuse_disagreement(head, measured, all);
      current = at(logs, current.vertex());
      off = wanted - tapes_of(current);
    }
    if (off.cwiseAbs().maxCoeff() > residual_mm) refuse_disagreement(head, measured, all);
    const Vector3d factors = logs.array().exp();
    // A head stretched one way half as much again as another is no head, even if its tapes fit.
    if (factors.maxCoeff() / factors.minCoeff() > 1.5) refuse_disagreement(head, measured, all);
    return {std::move(current), factors};
  } catch (const GeometryError&) {
    if (given.size() < 2) throw;
    refuse_disagreement(head, measured, all);
  }
}

}  // namespace scalpmark::geometry
