#include "geometry/hands/cap_slip.h"

#include <Eigen/Dense>
#include <array>
#include <cmath>
#include <vector>

#include "geometry/base/error.h"
#include "geometry/base/ranges.h"

namespace scalpmark::geometry {

using Eigen::MatrixXd;
using Eigen::Vector3d;
using Eigen::VectorXd;

namespace {

constexpr Range arrow_aside_mm{-60, 60};
/// Tapes read to the half centimetre do not miss a cap on this head by more: it is another cap, or misread.
constexpr double most_brim_misfit_mm = 10;

/// A reading: which of the four heights (then 4: the arrow), and what was read.
struct OneReading {
  std::size_t which;
  double mm;
};

std::vector<OneReading> taken(const BrimReadings& today) {
  const BrimHeights& h = today.heights;
  const std::array<std::optional<double>, 4> heights{h.nasion_mm, h.left_tragus_mm, h.right_tragus_mm,
                                                     h.inion_mm};
  const std::array names{Message::of("nasion"), Message::of("left tragus"), Message::of("right tragus"),
                         Message::of("inion")};
  std::vector<OneReading> readings;
  for (std::size_t i = 0; i < heights.size(); ++i) {
    if (!heights[i]) continue;
    if (!ranges::brim_height_mm.holds(*heights[i]))
      throw GeometryError(
          Message::of("The brim's height over the %1 must be from 0 to %2 mm; measure it again.", names[i],
                      number(ranges::brim_height_mm.high)));
    readings.push_back({i, *heights[i]});
  }
  if (readings.size() < 2)
    throw GeometryError(Message::of(
        "To say how the cap has slipped takes the brim's height over two or more of nasion, inion and the two tragi; measure another."));
  if (today.arrow_mm) {
    if (!arrow_aside_mm.holds(*today.arrow_mm))
      throw GeometryError(
          Message::of("The cap's arrow cannot pass more than %1 mm beside the nasion; put the cap on again.",
                      number(arrow_aside_mm.high)));
    readings.push_back({4, *today.arrow_mm});
  }
  return readings;
}

CapSlip slip_of(const Vector3d& x) {
  return {x[0], x[1], x[2]};
}

VectorXd predicted(const Head& head, const Cap& cap, const std::vector<OneReading>& readings,
                   const Vector3d& at) {
  const CapSlip slip = slip_of(at);
  const std::array<double, 4> heights = signed_brim_heights(head, cap, slip);
  VectorXd all(static_cast<Eigen::Index>(readings.size()));
  for (std::size_t i = 0; i < readings.size(); ++i)
    all[static_cast<Eigen::Index>(i)] = readings[i].which < heights.size()
                                            ? heights[readings[i].which]
                                            : arrow_beside_nasion_mm(head, cap, slip);
  return all;
}

/// mm a degree, by central differences over a few triangles' width.
MatrixXd sensitivity(const Head& head, const Cap& cap, const std::vector<OneReading>& readings,
                     const Vector3d& at) {
  constexpr double step_deg = 1;
  MatrixXd j(static_cast<Eigen::Index>(readings.size()), 3);
  for (int k = 0; k < 3; ++k) {
    const Vector3d step = step_deg * Vector3d::Unit(k);
    j.col(k) = (predicted(head, cap, readings, at + step) - predicted(head, cap, readings, at - step)) /
               (2 * step_deg);
  }
  return j;
}

}  // namespace

FoundSlip find_slip(const Head& head, const Cap& cap, const BrimReadings& today, const SlipErrors& errors) {
  const std::vector<OneReading> readings = taken(today);
  VectorXd read(static_cast<Eigen::Index>(readings.size()));
  for (std::size_t i = 0; i < readings.size(); ++i) read[static_cast<Eigen::Index>(i)] = readings[i].mm;

  constexpr int most_rounds = 30;
  constexpr double settled_deg = 1e-4;  // a fifth of a micron of brim
  Vector3d x = Vector3d::Zero();
  Eigen::JacobiSVD<MatrixXd> svd;
  Eigen::Index seen = 0;
  for (int round = 0; round < most_rounds; ++round) {
    const MatrixXd j = sensitivity(head, cap, readings, x) / errors.reading_mm;
    svd.compute(j, Eigen::ComputeThinU | Eigen::ComputeFullV);
    const VectorXd& s = svd.singularValues();
    // What is seen is settled at first: later rounds only refine it.
    if (round == 0)
      while (seen < s.size() && s[seen] * errors.unseen_deg > 1) ++seen;
    const VectorXd miss = (read - predicted(head, cap, readings, x)) / errors.reading_mm;
    const Vector3d step = svd.matrixV().leftCols(seen) *
                          (svd.matrixU().leftCols(seen).transpose() * miss).cwiseQuotient(s.head(seen));
    x += step;
    if (step.norm() < settled_deg) break;
  }

  FoundSlip found;
  found.slip = slip_of(x);
  Vector3d variance = Vector3d::Constant(errors.unseen_deg * errors.unseen_deg);
  for (Eigen::Index i = 0; i < seen; ++i) {
    const double s = svd.singularValues()[i];
    variance[i] = 1 / (s * s);
  }
  found.covariance = svd.matrixV() * variance.asDiagonal() * svd.matrixV().transpose();
  const Vector3d sd = found.covariance.diagonal().cwiseSqrt();
  found.sd = slip_of(sd);
  const double known_deg = errors.unseen_deg / 2;
  found.forward_said = sd[0] < known_deg;
  found.side_said = sd[1] < known_deg;
  found.turn_said = sd[2] < known_deg;
  found.worst_mm = (read - predicted(head, cap, readings, x)).cwiseAbs().maxCoeff();
  if (!(found.worst_mm <= most_brim_misfit_mm))
    throw GeometryError(Message::of(
        "The brim's heights fit no slip of a cap on this head: the nearest misses one by %1 cm; read the tapes again, and see whether it is the same cap.",
        number(found.worst_mm / 10)));
  return found;
}

}  // namespace scalpmark::geometry
