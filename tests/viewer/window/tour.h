#pragma once

#include <QSize>
#include <QString>
#include <functional>

#include "tests/viewer/window/opened_window.h"

namespace scalpmark::window {

/// Walks through the screens at one size of the window and saves each as a picture.
class Tour {
public:
  Tour(const QString& folder, QSize size);

  void run();

  void visits();

  void chair();

  /// The right side, and a scan whose four points are still to be placed.
  void another_head();

  void in_the_dark();

  /// What lies under each coil, on both sides, and how far off hands are.
  void looked_into();

  void brain();

  /// The induced field, on sphere and brain, on both sides, under each coil; its lessons and what-ifs.
  void field();

  void lesson();

  /// The cap as it is to be worn, and as it sits today after a slip, on both sides and in both units.
  void cap();

  /// The demo on an MRI, and its sheet; only where the template head is installed.
  void run_mri();

private:
  void hover(const Eigen::Vector3d& at);

  void lesson_steps(const char* name);
  void for_each_coil(const std::function<void(const geometry::Coil&)>& look);

  void snap(const char* name);

  OpenedWindow opened_;
  QString folder_;
  QSize size_;
};

}  // namespace scalpmark::window
