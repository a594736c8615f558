#pragma once

#include <memory>
#include <optional>

#include "geometry/head/head.h"
#include "geometry/plan/case.h"
#include "geometry/plan/plan.h"
#include "viewer/stage/scene/gaps_shown.h"
#include "viewer/window/jobs/latest_work.h"

namespace scalpmark::window {

/// How the coil on the stage rests and the gaps under it; worked out in a thread once the coil has rested for
/// a moment, so that a drag is not slowed.
class CoilContact : public QObject {
  Q_OBJECT
public:
  explicit CoilContact(QObject* parent = nullptr);

  /// What lies under this placement is wanted; `changed` comes when it is there. The same again changes
  /// nothing.
  void look_under(const geometry::Head& head, const geometry::Case& the_case,
                  const geometry::Placement& placement);
  void stop_looking();
  /// Of the placement last asked about; nothing while it is worked out.
  [[nodiscard]] const std::shared_ptr<const viewer::GapsShown>& gaps() const { return gaps_; }
  /// Why there is none.
  [[nodiscard]] const QString& problem() const { return problem_; }

signals:
  void changed();

private:
  struct Asked {
    geometry::Head head;
    geometry::CoilSetup coil;
    Eigen::Vector3d pulse, normal, front;
    [[nodiscard]] bool same_as(const Asked& other) const {
      return head.same_as(other.head) && coil == other.coil && pulse == other.pulse &&
             normal == other.normal && front == other.front;
    }
  };

  LatestWork work_;
  std::optional<Asked> asked_;
  std::shared_ptr<const viewer::GapsShown> gaps_;
  QString problem_;
};

}  // namespace scalpmark::window
