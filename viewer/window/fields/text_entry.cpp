#include "viewer/window/fields/text_entry.h"

#include <QKeyEvent>

namespace scalpmark::window {

bool TextEntry::event(QEvent* event) {
  if (event->type() == QEvent::ShortcutOverride && !isModified()) {
    const auto* key = static_cast<QKeyEvent*>(event);
    if (key->matches(QKeySequence::Undo) || key->matches(QKeySequence::Redo)) {
      event->ignore();
      return true;
    }
  }
  return QLineEdit::event(event);
}

}  // namespace scalpmark::window
