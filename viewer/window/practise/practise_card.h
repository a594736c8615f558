#pragma once

#include <QFrame>
#include <QLabel>
#include <QPushButton>
#include <QStackedWidget>
#include <QTableWidget>
#include <QVBoxLayout>

namespace scalpmark::window {

/// A card of the column on the left, with its heading.
struct PractiseCard {
  QFrame* frame = nullptr;
  QVBoxLayout* rows = nullptr;
};
[[nodiscard]] PractiseCard practise_card(const QString& heading);

/// Pages of which one is seen; as high as that one, not as the highest of all.
class PractisePages : public QStackedWidget {
public:
  using QStackedWidget::QStackedWidget;
  [[nodiscard]] QSize sizeHint() const override { return of_page(&QWidget::sizeHint); }
  [[nodiscard]] QSize minimumSizeHint() const override { return of_page(&QWidget::minimumSizeHint); }
  [[nodiscard]] int heightForWidth(int width) const override {
    return currentWidget() ? currentWidget()->heightForWidth(width) : -1;
  }

private:
  [[nodiscard]] QSize of_page(QSize (QWidget::*size)() const) const {
    return currentWidget() ? (currentWidget()->*size)() : QSize();
  }
};

/// A line of text that may be long; `name` is the look it has in the style sheet.
[[nodiscard]] QLabel* practise_text(const char* name = "");
/// Names and headings that are too long for their column stand in several lines.
void wrap_in_table(QTableWidget& table);
[[nodiscard]] QString in_two_lines(const QString& heading);
/// A button with what it does, for tooltip and for those who do not see it.
[[nodiscard]] QPushButton* practise_button(const QString& text, const QString& tooltip);

}  // namespace scalpmark::window
