#pragma once

#include <QFrame>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace scalpmark::window {

/// A card of the column on the left, with its heading.
struct PractiseCard {
  QFrame* frame = nullptr;
  QVBoxLayout* rows = nullptr;
};
[[nodiscard]] PractiseCard practise_card(const QString& heading);

/// A line of text that may be long; `name` is the look it has in the style sheet.
[[nodiscard]] QLabel* practise_text(const char* name = "");
/// A button with what it does, for tooltip and for those who do not see it.
[[nodiscard]] QPushButton* practise_button(const QString& text, const QString& tooltip);

}  // namespace scalpmark::window
