#pragma once

#include <QObject>

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

private:
  void face(Fiducial which);
  void turn_over();

  Session& session_;
  StageView& stage_;
  LandmarksStep& step_;
  std::size_t standing_ = 0;  // of the ways a head may stand in its file
};

}  // namespace scalpmark::window
