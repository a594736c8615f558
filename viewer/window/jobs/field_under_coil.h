#pragma once

#include <memory>
#include <optional>

#include "viewer/stage/scene/field_shown.h"

namespace scalpmark::window {

/// The induced field under the coil, worked out again only where coil, head or brain are others: it is quick
/// enough to follow a coil in the hand.
class FieldUnderCoil {
public:
  /// See viewer::field_under().
  [[nodiscard]] std::shared_ptr<const geometry::CoilField> look_under(
      const geometry::Head& head, const std::shared_ptr<const geometry::Cortex>& brain,
      const geometry::Coil& coil, const geometry::Placement& placement);

private:
  std::optional<geometry::Head> head_;
  std::shared_ptr<const geometry::Cortex> brain_;
  geometry::Coil coil_;
  geometry::CoilFrame frame_;
  std::shared_ptr<const geometry::CoilField> field_;
};

}  // namespace scalpmark::window
