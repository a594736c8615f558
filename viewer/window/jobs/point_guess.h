#pragma once

#include "geometry/head/guess_fiducials.h"
#include "viewer/window/jobs/latest_work.h"

namespace scalpmark::window {

/// A computer's guess of a skin's four points, worked out in a thread from the built-in head; to be confirmed
/// one by one by whoever looks at them.
class PointGuess : public QObject {
  Q_OBJECT
public:
  explicit PointGuess(QObject* parent = nullptr);

  void work_out(const geometry::Surface& skin);
  void give_up() { work_.give_up(); }
  [[nodiscard]] bool is_working() const { return work_.is_waiting(); }

signals:
  void found(const scalpmark::geometry::Fiducials& at);
  void failed(const QString& sentence);

private:
  LatestWork work_;
};

}  // namespace scalpmark::window
