#pragma once

#include <QButtonGroup>
#include <QLabel>
#include <QRadioButton>
#include <QWidget>
#include <vector>

namespace scalpmark::window {

/// A setting with a handful of values, all in sight.
class Choice : public QWidget {
  Q_OBJECT
public:
  struct Option {
    QString text, tooltip;
  };
  /// The options stand in a row, or one under another where their names are long.
  Choice(const QString& name, const std::vector<Option>& options, QWidget* parent = nullptr,
         Qt::Orientation way = Qt::Horizontal);

  void choose(int index);
  [[nodiscard]] int chosen() const { return group_->checkedId(); }
  [[nodiscard]] QRadioButton* button(int index) const;

signals:
  void picked(int index);

private:
  QButtonGroup* group_;
};

}  // namespace scalpmark::window
