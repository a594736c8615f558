#include "viewer/window/session/undo_list.h"

#include <utility>

namespace scalpmark::window {

UndoList::UndoList(Session& session, QObject* parent) : QObject(parent), session_(session) {
  connect(&session_, &Session::edited, this, &UndoList::edited);
  connect(&session_, &Session::edit_undone, this, &UndoList::edit_undone);
  connect(&session_, &Session::edit_redone, this, &UndoList::edit_redone);
  connect(&session_, &Session::started, this, &UndoList::start_over);
}

void UndoList::push(Entry entry) {
  entries_.resize(done_);
  entries_.push_back(std::move(entry));
  if (entries_.size() > most_deeds) entries_.erase(entries_.begin());
  done_ = entries_.size();
}

void UndoList::add(Kind kind, Deed deed, const QString& burst) {
  session_.end_burst();  // an edit after this is another one
  const bool goes_on = !burst.isEmpty() && burst == burst_ && done_ > 0 && done_ == entries_.size() &&
                       entries_.back().kind == kind;
  if (goes_on)
    entries_.back().deed.again = std::move(deed.again);
  else
    push({kind, std::move(deed)});
  burst_ = burst;
  emit changed();
}

void UndoList::forget(Kind kind) {
  std::size_t done = 0;
  for (std::size_t i = 0; i < done_; ++i) done += entries_[i].kind != kind;
  done_ = done;
  std::erase_if(entries_, [kind](const Entry& entry) { return entry.kind == kind; });
  burst_.clear();
  emit changed();
}

QString UndoList::undo_name() const {
  return can_undo() ? entries_[done_ - 1].deed.what : QString();
}

QString UndoList::redo_name() const {
  return can_redo() ? entries_[done_].deed.what : QString();
}

bool UndoList::undoes_a_head() const {
  if (!can_undo() || entries_[done_ - 1].kind != Kind::edit || !session_.history().can_undo()) return false;
  return session_.history().before().head != session_.case_file().head;
}

void UndoList::undo() {
  if (!can_undo()) return;
  burst_.clear();
  if (entries_[done_ - 1].kind == Kind::edit) {
    session_.undo();  // says when it is done: another head may have to be loaded first
    return;
  }
  --done_;
  // By value: what is taken back may add to the list.
  const auto back = entries_[done_].deed.back;
  back();
  emit changed();
}

void UndoList::redo() {
  if (!can_redo()) return;
  burst_.clear();
  if (entries_[done_].kind == Kind::edit) {
    session_.redo();
    return;
  }
  const auto again = entries_[done_].deed.again;
  ++done_;
  again();
  emit changed();
}

void UndoList::edited(bool new_step) {
  if (new_step) push({Kind::edit, {session_.history().undo_name(), {}, {}}});
  burst_.clear();
  emit changed();
}

// Asked for by undo(), or past this list; then what was done after the edit goes with it.
void UndoList::edit_undone() {
  while (done_ > 0 && entries_[done_ - 1].kind != Kind::edit) --done_;
  if (done_ > 0) --done_;
  emit changed();
}

void UndoList::edit_redone() {
  while (done_ < entries_.size() && entries_[done_].kind != Kind::edit) ++done_;
  if (done_ < entries_.size()) ++done_;
  emit changed();
}

void UndoList::start_over() {
  entries_.clear();
  done_ = 0;
  burst_.clear();
  emit changed();
}

}  // namespace scalpmark::window
