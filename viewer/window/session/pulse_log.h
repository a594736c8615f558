#pragma once

#include <QDateTime>
#include <QObject>
#include <functional>
#include <memory>
#include <optional>
#include <vector>

#include "geometry/answers/visit_answers.h"
#include "viewer/window/session/session.h"

namespace scalpmark::window {

/// Pulses logged into the visits of the case in force, one by one, and what they say. The spot and the output
/// at hand are no part of the case; each pulse, its correction and its taking back is an edit like others,
/// and is on disk (in the recovery copy) when the call returns.
class PulseLog : public QObject {
  Q_OBJECT
public:
  explicit PulseLog(Session& session, QObject* parent = nullptr);

  // --- at hand
  [[nodiscard]] const geometry::GridPosition& spot() const { return spot_; }
  void set_spot(const geometry::GridPosition& spot);
  /// On in the spiral, or back.
  void step_spot(int by);
  [[nodiscard]] int output_percent() const { return output_percent_; }
  void set_output(int percent);
  /// By so many of the case's steps, or of its fine ones.
  void step_output(int by, bool fine);

  // --- visits
  /// The visit that is shown, from 0; none: a new one, which begins with its first pulse.
  [[nodiscard]] std::optional<std::size_t> shown() const;
  void show_visit(std::optional<std::size_t> visit);
  /// The visit shown; none where a new one is.
  [[nodiscard]] const geometry::Visit* visit() const;
  /// Whether pulses go to the visit shown: it is of today. Else they begin another.
  [[nodiscard]] bool is_open() const;
  /// Changes the visit shown, or begins a new one of today with the change. Returns the sentence of a
  /// refusal.
  QString edit_visit(const QString& what, const std::function<void(geometry::Visit&)>& edit);

  /// The same of the visit shown if it is of today, else of a new one.
  QString edit_today(const QString& what, const std::function<void(geometry::Visit&)>& edit);

  // --- pulses; all return the sentence of a refusal
  QString log(geometry::SeenAnswer answer);
  /// The last pulse of the visit shown.
  QString take_back();
  /// Another answer for a pulse of the visit shown; the first one noted stays to be seen.
  QString correct(std::size_t pulse, geometry::SeenAnswer answer);

  /// What the pulses of the visit shown say of the plan's grid; worked out when first asked for.
  [[nodiscard]] const std::shared_ptr<const geometry::VisitAnswers>& answers();
  /// What the pulses at the spot at hand say of the threshold; null without any. The same as long as nothing
  /// of that changed.
  [[nodiscard]] const std::shared_ptr<const geometry::ThresholdAtSpot>& threshold();

  /// The clock, for tests.
  void set_clock(std::function<QDateTime()> clock) { clock_ = std::move(clock); }
  [[nodiscard]] geometry::Date today() const;

signals:
  /// Spot, output or the visit shown; the case's own changes are told by Session::changed.
  void changed();
  void spot_changed();
  void other_visit_shown();

private:
  QString edit_at(std::optional<std::size_t> visit, const QString& what,
                  const std::function<void(geometry::Visit&)>& edit);
  /// What answers and threshold hang on.
  struct Asked {
    geometry::Shared<geometry::Visit> visit;
    geometry::AnswerSettings settings;
    geometry::GridPosition hotspot;
    std::vector<Eigen::Vector3d> pulses;
    friend bool operator==(const Asked&, const Asked&) = default;
  };
  [[nodiscard]] Asked asked_now() const;

  Session& session_;
  std::function<QDateTime()> clock_;
  geometry::GridPosition spot_;
  int output_percent_ = geometry::CountingSteps{}.first_percent;
  std::optional<std::size_t> shown_;
  bool is_chosen_ = false;  // by somebody; else the last visit of today is shown
  std::optional<Asked> asked_;
  std::shared_ptr<const geometry::VisitAnswers> answers_;
  std::optional<Asked> threshold_asked_;
  geometry::GridPosition threshold_spot_;
  std::shared_ptr<const geometry::ThresholdAtSpot> threshold_;
};

}  // namespace scalpmark::window
