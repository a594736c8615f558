#pragma once

#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "geometry/plan/case.h"
#include "geometry/plan/plan.h"
#include "viewer/page/face.h"
#include "viewer/stage/scene/camera.h"
#include "viewer/stage/scene/shown.h"
#include "viewer/teach/lesson.h"

namespace scalpmark::viewer {

/// One thing to look at in a page, with what is said beside it.
struct PageScene {
  std::string title, text, why;  ///< `why` may be empty
  Shown shown;
  Gaze gaze;
  std::optional<CloseLook> close;  ///< empty: the whole head
};

/// A technician's: treatment, search, landmarks.
[[nodiscard]] std::vector<PageScene> technician_scenes(const geometry::Case& the_case,
                                                       const geometry::Plan& plan);
/// A class': the steps of the lesson.
[[nodiscard]] std::vector<PageScene> lesson_scenes(const geometry::Case& the_case,
                                                   const geometry::Plan& plan);
/// A patient's: Explain's pages, all with the same picture; with the brain where there is one, lit by the
/// field where there is one.
[[nodiscard]] std::vector<PageScene> patient_scenes(const geometry::Plan& plan,
                                                    const std::shared_ptr<const geometry::Cortex>& brain,
                                                    const std::shared_ptr<const geometry::CoilField>& field);

}  // namespace scalpmark::viewer
