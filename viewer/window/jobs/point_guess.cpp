#include "viewer/window/jobs/point_guess.h"

#include <memory>

#include "models/generic/generic_head.h"

namespace scalpmark::window {

PointGuess::PointGuess(QObject* parent) : QObject(parent), work_(0) {
  connect(&work_, &LatestWork::failed, this, &PointGuess::failed);
}

void PointGuess::work_out(const geometry::Surface& skin) {
  const auto guess = std::make_shared<geometry::FiducialGuess>();
  work_.ask(
      [skin, guess](LatestWork::Job&) { *guess = geometry::guess_fiducials(models::generic_head(), skin); },
      [this, guess] { emit found(guess->at); });
}

}  // namespace scalpmark::window
