#include "viewer/window/session/case_history.h"

namespace scalpmark::window {

void CaseHistory::start_over(models::CaseFile first) {
  steps_.clear();
  steps_.push_back({std::move(first), {}});
  at_ = 0;
  saved_ = 0;
  burst_.clear();
}

bool CaseHistory::add(models::CaseFile case_file, QString what, QString burst) {
  const auto at = static_cast<std::ptrdiff_t>(at_);
  if (saved_ > at) saved_ = -1;  // the saved case was undone and is now out of reach
  steps_.resize(at_ + 1);
  const bool same_burst = !burst.isEmpty() && burst == burst_ && at_ > 0 && saved_ != at;
  if (same_burst) {
    steps_[at_].case_file = std::move(case_file);
  } else {
    steps_.push_back({std::move(case_file), std::move(what)});
    ++at_;
    if (steps_.size() > most_steps) {
      steps_.erase(steps_.begin());
      --at_;
      if (saved_ >= 0) --saved_;  // -1 when the saved case is the one forgotten
    }
  }
  burst_ = std::move(burst);
  return !same_burst;
}

void CaseHistory::undo() {
  if (can_undo()) --at_;
  burst_.clear();
}

void CaseHistory::redo() {
  if (can_redo()) ++at_;
  burst_.clear();
}

}  // namespace scalpmark::window
