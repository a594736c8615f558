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
#include "geometry/hands/mark_moves.h"
#include "viewer/window/session/session.h"

namespace scalpmark::window {

/// The two marks that today's coil is laid by.
enum class TodaysMark { site, edge };

/// Today's marks as they were found on the head, and what they make of the case's plan. Lives no longer than
/// the case is open; nothing of it is saved.
class Visit : public QObject {
  Q_OBJECT
public:
  /// What was entered and found, without what follows from it.
  struct Entered {
    std::array<std::optional<geometry::SurfacePoint>, 2> marks;
    std::array<geometry::TapeReadings, 2> readings;
    std::array<geometry::FoundMark, 2> found;
    std::array<bool, 2> awaited{};  ///< to be found when the head's fields are there
    geometry::CheckLimits limits;
    geometry::BrimReadings brim;
  };

  explicit Visit(Session& session, QObject* parent = nullptr);

  /// A mark that was clicked.
  void set(TodaysMark which, const geometry::SurfacePoint& at);
  /// A mark measured with tapes; returns the sentence of a refusal. Fewer than two readings wait for more. On
  /// a head whose distance fields are not there yet the mark comes when they are, its refusal by problem().
  /// Where several places fit there is no mark until one of them is chosen, or one more tape is entered.
  QString set(TodaysMark which, const geometry::TapeReadings& readings);
  /// Brim heights and arrow of today's cap; returns the sentence of a refusal. Fewer than two heights wait
  /// for more.
  QString set(const geometry::BrimReadings& readings);
  void choose(TodaysMark which, std::size_t place);
  void choose_nearest_to_plan(TodaysMark which);
  /// Starts the check over, as the user wants it.
  void start_over();
  /// The same since the head is another one.
  void forget();
  /// As it was before or after something that `did` told of.
  void restore(const Entered& entered);
  [[nodiscard]] const Entered& entered() const { return now_; }
  void set_limits(const geometry::CheckLimits& limits);

  [[nodiscard]] const std::optional<geometry::SurfacePoint>& mark(TodaysMark which) const {
    return now_.marks[static_cast<std::size_t>(which)];
  }
  [[nodiscard]] const geometry::TapeReadings& readings(TodaysMark which) const {
    return now_.readings[static_cast<std::size_t>(which)];
  }
  /// The tapes to a mark, as a visit keeps them: those read, or to one that was clicked those looked up, to a
  /// millimetre. None for a mark that is not there, and while the head's fields are not.
  [[nodiscard]] geometry::TapeReadings tapes_to_keep(TodaysMark which) const;
  [[nodiscard]] const geometry::BrimReadings& brim() const { return now_.brim; }
  /// How today's cap sits, once its heights say it.
  [[nodiscard]] const std::optional<geometry::CapToday>& cap() const { return cap_; }
  /// The same to be shown.
  [[nodiscard]] const std::shared_ptr<const geometry::CapVeil>& cap_veil() const { return cap_veil_; }
  /// The places that fit its tapes; none for a mark that was clicked.
  [[nodiscard]] const geometry::FoundMark& found(TodaysMark which) const {
    return now_.found[static_cast<std::size_t>(which)];
  }
  /// The mark whose place is to be chosen, the site mark first.
  [[nodiscard]] std::optional<TodaysMark> asked() const;
  /// What is known of a mark's place by its tapes, and what to do; empty for one that was clicked.
  [[nodiscard]] QString about(TodaysMark which) const;
  /// Why the marks are not known well enough for a verdict: what about() says of the first that is not.
  [[nodiscard]] QString doubt() const;
  [[nodiscard]] const geometry::CheckLimits& limits() const { return now_.limits; }
  /// What came of it, once both marks are there and fit a coil.
  [[nodiscard]] const std::optional<geometry::Check>& check() const { return check_; }
  /// Where the marks of that check would have to go.
  [[nodiscard]] const geometry::MarkMoves& moves() const { return moves_; }
  /// Why the two marks make no placement.
  [[nodiscard]] const QString& problem() const { return problem_; }

signals:
  void changed();
  /// The user entered or chose something; until then it was so.
  void did(const QString& what, const scalpmark::window::Visit::Entered& before);

private:
  /// Tells of what the user does while it lives.
  class Doing;
  void work_out();
  /// Returns the sentence of a refusal.
  QString work_out_cap();
  QString find(std::size_t which);
  void take_found(std::size_t which);
  void find_awaited();

  Session& session_;
  Entered now_;
  std::optional<geometry::Check> check_;
  geometry::MarkMoves moves_;
  QString problem_;
  std::optional<geometry::CapToday> cap_;
  std::shared_ptr<const geometry::CapVeil> cap_veil_;
};

}  // namespace scalpmark::window
