#pragma once

#include <QString>
#include <cstddef>
#include <vector>

#include "models/cases/case_file.h"

namespace scalpmark::window {

/// Undo is a list of cases: the one in force, those before it and those undone.
class CaseHistory {
public:
  static constexpr std::size_t most_steps = 1000;

  explicit CaseHistory(models::CaseFile first) { start_over(std::move(first)); }

  /// Forgets everything before; the case counts as saved.
  void start_over(models::CaseFile first);

  [[nodiscard]] const models::CaseFile& now() const { return steps_[at_].case_file; }
  [[nodiscard]] bool can_undo() const { return at_ > 0; }
  [[nodiscard]] bool can_redo() const { return at_ + 1 < steps_.size(); }
  /// What undo would take back, what redo would bring back: "Side", "Lateral".
  [[nodiscard]] QString undo_name() const { return can_undo() ? steps_[at_].what : QString(); }
  [[nodiscard]] QString redo_name() const { return can_redo() ? steps_[at_ + 1].what : QString(); }
  [[nodiscard]] const models::CaseFile& before() const { return steps_[at_ - 1].case_file; }
  [[nodiscard]] const models::CaseFile& after() const { return steps_[at_ + 1].case_file; }

  /// Puts a new case in force. With the same non-empty `burst` as the last step (turning a wheel, holding an
  /// arrow key) it replaces that step, so that one undo takes back the whole turn. Of more than `most_steps`
  /// the oldest are forgotten, so that a day's use takes no more memory than an hour's. Returns whether there
  /// is one step more to undo.
  bool add(models::CaseFile case_file, QString what, QString burst = {});
  void undo();
  void redo();
  /// The next step starts anew, whatever its burst.
  void end_burst() { burst_.clear(); }

  void mark_saved() { saved_ = static_cast<std::ptrdiff_t>(at_); }
  void mark_unsaved() { saved_ = -1; }
  [[nodiscard]] bool is_saved() const { return saved_ == static_cast<std::ptrdiff_t>(at_); }
  /// Where the case is kept moved (saved under a new name): relative paths start elsewhere from now on.
  void replace_now(models::CaseFile case_file) { steps_[at_].case_file = std::move(case_file); }

private:
  struct Step {
    models::CaseFile case_file;
    QString what;
  };
  std::vector<Step> steps_;
  std::size_t at_ = 0;
  std::ptrdiff_t saved_ = 0;  // -1: no case of the list is the one in the file
  QString burst_;
};

}  // namespace scalpmark::window
