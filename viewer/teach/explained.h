#pragma once

#include <memory>

#include "geometry/plan/plan.h"
#include "viewer/stage/scene/shown.h"

namespace scalpmark::viewer {

/// What a patient sees: a plain head, the coil on the treatment site, both named, no numbers; the brain in it
/// where there is one (else null).
[[nodiscard]] Shown explained(const geometry::Plan& plan,
                              const std::shared_ptr<const geometry::Cortex>& brain);

}  // namespace scalpmark::viewer
