#pragma once

#include <QObject>
#include <QString>
#include <functional>
#include <optional>
#include <vector>

#include "viewer/window/session/session.h"

namespace scalpmark::window {

/// What the user did, one after the other, whatever it was: edits of the case, moves of the coil in the hand,
/// today's marks, points placed on a skin. Undo takes back the last of them. Edits are the session's to take
/// back; this list only knows when they came.
class UndoList : public QObject {
  Q_OBJECT
public:
  static constexpr std::size_t most_deeds = CaseHistory::most_steps;

  enum class Kind { edit, coil, visit, point };
  struct Deed {
    QString what;  ///< "Coil moved"
    std::function<void()> back, again;
  };

  explicit UndoList(Session& session, QObject* parent = nullptr);

  /// With the same non-empty `burst` as the last one (a drag, a key held down) it becomes part of that.
  void add(Kind kind, Deed deed, const QString& burst = {});
  void end_burst() { burst_.clear(); }
  /// What can be taken back no longer, since what it was done to is gone.
  void forget(Kind kind);

  [[nodiscard]] bool can_undo() const { return done_ > 0; }
  [[nodiscard]] bool can_redo() const { return done_ < entries_.size(); }
  [[nodiscard]] QString undo_name() const;
  [[nodiscard]] QString redo_name() const;
  /// Whether undo would bring another head back.
  [[nodiscard]] bool undoes_a_head() const;
  void undo();
  void redo();

signals:
  void changed();

private:
  struct Entry {
    Kind kind;
    Deed deed;  ///< of an edit only its name
  };
  void push(Entry entry);
  void edited(bool new_step);
  void edit_undone();
  void edit_redone();
  void start_over();

  Session& session_;
  std::vector<Entry> entries_;
  std::size_t done_ = 0;  ///< entries before it hold, those from it on are taken back
  QString burst_;
};

}  // namespace scalpmark::window
