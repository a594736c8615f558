#pragma once

#include <QObject>
#include <QString>
#include <array>
#include <memory>
#include <optional>

#include "geometry/hands/cap_today.h"
#include "geometry/hands/cap_veil.h"
#include "geometry/hands/check.h"
#include "geometry/hands/find_by_tapes.h"
#include "viewer/window/session/session.h"

namespace scalpmark::window {

/// The two marks that today's coil is laid by.
enum class TodaysMark { site, edge };

/// Today's marks as they were found on the head, and what they make of the case's plan. Lives no longer than
/// the case is open; nothing of it is saved.
class Visit : public QObject {
  Q_OBJECT
public:
  explicit Visit(Session& session, QObject* parent = nullptr);

  /// A mark that was clicked.
  void set(TodaysMark which, const geometry::SurfacePoint& at);
  /// A mark measured with tapes; returns the sentence of a refusal. Fewer than two readings wait for more. On
  /// a head whose distance fields are not there yet the mark comes when they are, its refusal by problem().
  QString set(TodaysMark which, const geometry::TapeReadings& readings);
  /// Brim heights and arrow of today's cap; returns the sentence of a refusal. Fewer than two heights wait
  /// for more.
  QString set(const geometry::BrimReadings& readings);
  void forget();
  void set_limits(const geometry::CheckLimits& limits);

  [[nodiscard]] const std::optional<geometry::SurfacePoint>& mark(TodaysMark which) const {
    return marks_[static_cast<std::size_t>(which)];
  }
  [[nodiscard]] const geometry::TapeReadings& readings(TodaysMark which) const {
    return readings_[static_cast<std::size_t>(which)];
  }
  [[nodiscard]] const geometry::BrimReadings& brim() const { return brim_; }
  /// How today's cap sits, once its heights say it.
  [[nodiscard]] const std::optional<geometry::CapToday>& cap() const { return cap_; }
  /// The same to be shown.
  [[nodiscard]] const std::shared_ptr<const geometry::CapVeil>& cap_veil() const { return cap_veil_; }
  [[nodiscard]] const geometry::CheckLimits& limits() const { return limits_; }
  /// What came of it, once both marks are there and fit a coil.
  [[nodiscard]] const std::optional<geometry::Check>& check() const { return check_; }
  /// Why the two marks make no placement.
  [[nodiscard]] const QString& problem() const { return problem_; }

signals:
  void changed();

private:
  void work_out();
  /// Returns the sentence of a refusal.
  QString work_out_cap();
  QString find(std::size_t which);
  void find_awaited();

  Session& session_;
  std::array<std::optional<geometry::SurfacePoint>, 2> marks_;
  std::array<geometry::TapeReadings, 2> readings_;
  std::array<bool, 2> awaited_{};  // to be found when the head's fields are there
  geometry::CheckLimits limits_;
  std::optional<geometry::Check> check_;
  QString problem_;
  geometry::BrimReadings brim_;
  std::optional<geometry::CapToday> cap_;
  std::shared_ptr<const geometry::CapVeil> cap_veil_;
};

}  // namespace scalpmark::window
