#pragma once

#include <QLabel>
#include <QPushButton>
#include <QTableWidget>
#include <QWidget>

#include "viewer/practise/class_results.h"

namespace scalpmark::window {

/// A class, in letters that are read from the back of the room: each step's own error as median and
/// quartiles, which files were left out, and what is saved of it.
class ClassPanel : public QWidget {
  Q_OBJECT
public:
  explicit ClassPanel(QWidget* parent = nullptr);

  void show_class(const viewer::ClassResults& results);
  /// Larger with the window.
  void size_type(int window_height);

  [[nodiscard]] QTableWidget* table() const { return table_; }
  [[nodiscard]] QString left_out() const { return left_out_->text(); }
  [[nodiscard]] QPushButton* page() const { return page_; }
  [[nodiscard]] QPushButton* csv() const { return csv_; }
  [[nodiscard]] QPushButton* done() const { return done_; }

private:
  QLabel *heading_, *pulse_, *left_out_, *note_;
  QTableWidget* table_;
  QPushButton *page_, *csv_, *done_;
};

}  // namespace scalpmark::window
