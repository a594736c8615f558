#include "geometry/exercise/drawn_head.h"

#include <Eigen/Dense>
#include <cmath>
#include <optional>

#include "geometry/base/error.h"
#include "geometry/hands/draws.h"
#include "geometry/head/ellipse_tapes.h"

namespace scalpmark::geometry {

using Eigen::Matrix3d;
using Eigen::Vector3d;

namespace {

/// Nasion-inion, tragus-tragus, circumference, mm (large anthropometric surveys, memory; nasion to inion of
/// both together).
struct SurveyTapes {
  Vector3d mean, sd;
};
const SurveyTapes of_women{{360, 341, 561}, {15, 14, 18}}, of_men{{360, 352, 574}, {15, 13, 16}};

/// About the length, breadth and height over the tragi of an adult, and how much each varies by itself within
/// women and within men, mm (same surveys, memory).
const Vector3d usual_size_mm{194, 150.5, 128.5}, size_sd_mm{7, 5, 6};

constexpr double most_deviations = 3;
constexpr int most_draws = 200;

/// The root of how the three tapes of ellipsoids go together (Cholesky's), each with a spread of 1.
Matrix3d root_of_correlation() {
  constexpr double nudge_mm = 0.1;
  Matrix3d slope;
  for (int k = 0; k < 3; ++k)
    slope.col(k) = (ellipse_tapes(usual_size_mm + nudge_mm * Vector3d::Unit(k)) -
                    ellipse_tapes(usual_size_mm - nudge_mm * Vector3d::Unit(k))) /
                   (2 * nudge_mm);
  const Matrix3d covariance = slope * size_sd_mm.cwiseAbs2().asDiagonal() * slope.transpose();
  const Vector3d inverse_sd = covariance.diagonal().cwiseSqrt().cwiseInverse();
  const Matrix3d correlation = inverse_sd.asDiagonal() * covariance * inverse_sd.asDiagonal();
  return correlation.llt().matrixL();
}

/// One draw; nothing where a tape is too far off.
std::optional<MeasuredTapes> draw_tapes(std::uint32_t number, int round) {
  enum Stream : int { woman = 0, first = 1 };
  const Draws draws(number, -1 - round);  // apart from the marks of an exercise (right_answers.cpp)
  const SurveyTapes& survey = draws.uniform(woman) <= 0.5 ? of_women : of_men;
  Vector3d each;
  for (int k = 0; k < 3; ++k) each[k] = draws.normal(first + k);
  static const Matrix3d root = root_of_correlation();
  const Vector3d off = root * each;
  if (off.cwiseAbs().maxCoeff() > most_deviations) return {};
  const Vector3d mm = survey.mean + survey.sd.cwiseProduct(off);
  return MeasuredTapes{mm[0], mm[1], mm[2]};
}

}  // namespace

MeasuredTapes drawn_tapes(std::uint32_t number) {
  for (int round = 0;; ++round)
    if (const auto tapes = draw_tapes(number, round)) return *tapes;
}

ScaledHead drawn_head(const Head& model, std::uint32_t number) {
  for (int round = 0; round < most_draws; ++round) {
    const auto tapes = draw_tapes(number, round);
    if (!tapes) continue;
    try {
      return scale_to_tapes(model, *tapes);
    } catch (const GeometryError&) {
      // No head of this shape has these three together; the next draw.
    }
  }
  throw GeometryError(Message::of(
      "No head could be drawn for this number: the head to be scaled has no usual tapes; use another."));
}

}  // namespace scalpmark::geometry
