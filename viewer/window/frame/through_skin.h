#pragma once

#include <QObject>
#include <QString>

#include "viewer/stage/scene/shown.h"
#include "viewer/window/session/session.h"

namespace scalpmark::window {

/// Looking through the skin at the template's brain: how much of the skin is left, and the brain that is
/// wanted as soon as less than all of it is, or a patient looks on. Where there is none, that is said to
/// staff.
class ThroughSkin : public QObject {
  Q_OBJECT
public:
  explicit ThroughSkin(Session& session);

  /// How much of the skin is left to be seen, 0 to 1.
  void set_opacity(double opacity);
  [[nodiscard]] double opacity() const { return opacity_; }
  /// A patient looks on from now on, or no more. Nothing is said meanwhile.
  void set_for_patient(bool on);
  void add_to(viewer::Shown& shown) const;

signals:
  void changed();
  /// Why there is no brain.
  void no_brain(const QString& sentence);

private:
  void want_brain();
  void say_no_brain();

  Session& session_;
  double opacity_ = 1;
  bool for_patient_ = false;
  QString no_brain_;
};

}  // namespace scalpmark::window
