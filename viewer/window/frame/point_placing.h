#pragma once

#include <QObject>

#include "viewer/window/jobs/point_guess.h"
#include "viewer/window/session/session.h"
#include "viewer/window/stage_view/stage_view.h"
#include "viewer/window/steps/landmarks_step.h"

namespace scalpmark::window {

/// Placing nasion, inion and tragi on a skin that has none yet: faces the one that is wanted, and goes from
/// one to the next.
class PointPlacing : public QObject {
  Q_OBJECT
public:
  PointPlacing(Session& session, StageView& stage, LandmarksStep& step);

  /// Another skin is there.
  void begin();
  /// A click on it.
  void place(const Eigen::Vector3d& at);

signals:
  /// By hand; it was there before. What has the same `burst` is one drag.
  void placed(Fiducial which, const std::optional<Eigen::Vector3d>& before, const QString& burst);

private:
  void put(Fiducial which, const Eigen::Vector3d& at, const QString& burst);
  void face(Fiducial which);
  void turn_over();
  /// On to the next one that is missing, or only guessed.
  void go_on();

  Session& session_;
  StageView& stage_;
  LandmarksStep& step_;
  PointGuess guess_;
  int drags_ = 0;             // counts them
  std::size_t standing_ = 0;  // of the ways a head may stand in its file
};

}  // namespace scalpmark::window
