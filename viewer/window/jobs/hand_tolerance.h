#pragma once

#include <atomic>
#include <memory>
#include <optional>

#include "geometry/hands/tolerance.h"
#include "geometry/hands/with_strips.h"
#include "models/cases/case_file.h"
#include "viewer/window/jobs/latest_work.h"

namespace scalpmark::window {

/// How far off hands could put the pulse of the case in force; worked out in a thread, on all cores but one,
/// with the placements and the seed of `scalpmark tolerance`.
class HandTolerance : public QObject {
  Q_OBJECT
public:
  explicit HandTolerance(QObject* parent = nullptr);

  /// Is wanted for this case; `changed` comes when it is there, and while it is worked out. The same again
  /// changes nothing.
  void work_out(const geometry::Head& head, const models::CaseFile& case_file, const geometry::Plan& plan);
  /// Given up, until another case is asked about or this one is forgotten.
  void give_up();
  void forget();

  /// Nothing until a first figure is there, from few placements; that one while it is refined.
  [[nodiscard]] const std::shared_ptr<const geometry::Tolerance>& found() const { return found_; }
  /// What strips of paper gain over a tape that is read; there once the figure is refined.
  [[nodiscard]] const std::shared_ptr<const geometry::WithStrips>& strips() const { return strips_; }
  [[nodiscard]] bool is_working() const { return work_.is_waiting(); }
  [[nodiscard]] bool is_given_up() const { return given_up_; }
  [[nodiscard]] double fraction() const { return fraction_; }
  [[nodiscard]] const QString& problem() const { return problem_; }

signals:
  void changed();

private:
  /// The first figure, made in the thread and taken from there once it says that it is there.
  struct Rough {
    std::shared_ptr<geometry::Tolerance> found = std::make_shared<geometry::Tolerance>();
    std::atomic<bool> is_there = false;
  };
  std::shared_ptr<Rough> rough_;
  LatestWork work_;
  std::optional<geometry::Case> asked_;
  std::optional<geometry::Head> asked_head_;
  bool given_up_ = false;
  double fraction_ = 0;
  std::shared_ptr<const geometry::Tolerance> found_;
  std::shared_ptr<const geometry::WithStrips> strips_;
  QString problem_;
};

}  // namespace scalpmark::window
