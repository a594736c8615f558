#pragma once

#include <Eigen/Core>
#include <array>
#include <map>
#include <vector>

#include "geometry/exercise/attempt.h"
#include "geometry/exercise/exercise.h"
#include "geometry/head/head.h"
#include "geometry/plan/case.h"
#include "geometry/plan/plan.h"
#include "geometry/plan/tape_readings.h"

namespace scalpmark::geometry {

/// The two marks that someone else has drawn: for a site somewhere around the case's, at an angle somewhere
/// around it, so that neither can be guessed. Both drawn as the case draws them, without error.
struct GivenMarks {
  Eigen::Vector3d site = Eigen::Vector3d::Zero(), edge = Eigen::Vector3d::Zero();
};

/// A mark that was lost with the old cap, as the note has it.
struct LostMark {
  SurfacePoint at;
  TapeReadings written;  ///< to the whole mm, as a note in cm with one decimal says it
  /// Unrounded, to vertex, nasion, left and right tragus, mm; and the way each tape goes as it arrives, unit.
  std::array<double, 4> exact_mm{};
  std::array<Eigen::Vector3d, 4> arriving;
};

/// All that is right in an exercise, worked out once for a head and a case: the plan (solve()), and where
/// each step ought to be. For showing after the exercise, never during.
struct RightAnswers {
  Head head;
  Case the_case;  ///< with the spot that answers; a hotspot between spots is taken to the spot nearest to it
  Exercise exercise;
  Plan plan;
  std::map<Step, Placed> right;  ///< every step of every task, asked for or not
  GivenMarks given;
  LostMark lost;
};

/// Refuses (GeometryError) what check_exercise() and solve() refuse, and a case whose treatment's or grid's
/// marks fall off the head.
[[nodiscard]] RightAnswers right_answers(const Head& head, const Case& the_case, const Exercise& exercise);

}  // namespace scalpmark::geometry
