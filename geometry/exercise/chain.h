#pragma once

#include <Eigen/Core>
#include <memory>
#include <optional>

#include "geometry/exercise/attempt.h"
#include "geometry/exercise/right_answers.h"

namespace scalpmark::geometry {

/// Where each step ought to be given what came before it, by the kernel's own functions: the vertex of the
/// points that were marked, the start measured from the vertex that was marked, and so on. Steps are taken in
/// the order of the trade.
class Chain {
public:
  /// `answers` outlives it.
  explicit Chain(const RightAnswers& answers);
  explicit Chain(RightAnswers&&) = delete;
  ~Chain();
  Chain(const Chain&) = delete;
  Chain& operator=(const Chain&) = delete;

  /// What the step ought to be after all that was taken so far. A task that the exercise does not ask for,
  /// and that comes before one that it asks for, was done right by someone else (given_steps()), so nothing
  /// is carried past it; what comes after the last is gone on with without error. Empty where what came
  /// before leaves no answer (points that make no head, a start off the head).
  [[nodiscard]] std::optional<Placed> should_be(const Step& step);
  /// What was put down for the step, which later steps go by. Where nothing was put down they go by what it
  /// ought to be.
  void take(const Step& step, const Placed& placed);
  /// What later steps go by: what was taken, else what it ought to be.
  [[nodiscard]] std::optional<Placed> stands(const Step& step);

private:
  struct Parts;
  std::unique_ptr<Parts> parts_;
};

}  // namespace scalpmark::geometry
