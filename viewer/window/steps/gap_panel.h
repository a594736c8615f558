#pragma once

#include <QCheckBox>
#include <QLabel>
#include <QWidget>

#include "viewer/window/jobs/coil_contact.h"

namespace scalpmark::window {

/// "Gap under the coil": shows the map on the stage or not, and says in a line or two where the coil touches,
/// the gap under each wing, and what it hits.
class GapPanel : public QWidget {
  Q_OBJECT
public:
  explicit GapPanel(QWidget* parent = nullptr);
  void set_on(bool on);
  void show_contact(const CoilContact& contact);
  [[nodiscard]] QCheckBox* box() const { return box_; }
  [[nodiscard]] QString text() const { return line_->text(); }

signals:
  void toggled(bool on);

private:
  QCheckBox* box_;
  QLabel* line_;
};

/// The line itself.
[[nodiscard]] QString contact_line(const geometry::Contact& contact);

}  // namespace scalpmark::window
