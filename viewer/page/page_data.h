#pragma once

#include <memory>
#include <nlohmann/json.hpp>
#include <string>
#include <vector>

#include "viewer/page/face.h"
#include "viewer/page/page_head.h"
#include "viewer/page/page_scenes.h"
#include "viewer/stage/scene/scene.h"

namespace scalpmark::viewer {

/// A page's scenes as they are drawn: of stage/scene, with their values as JSON.
struct PageDrawn {
  PageScene scene;
  Scene drawn;
};
[[nodiscard]] std::vector<PageDrawn> drawn(const HeadOfPage& head, std::vector<PageScene> scenes);

/// What the page's script works with, but for the bodies and the kernel, which are bytes. A patient's has
/// neither case nor numbers.
[[nodiscard]] nlohmann::ordered_json page_data(const HeadOfPage& head, const std::vector<PageDrawn>& scenes,
                                               Face face, const std::vector<std::string>& patterns);

/// The skin that is drawn, and the brain where a scene has one (else empty), as bytes (kernel/skin_bytes.h).
struct PageBodies {
  std::string skin, brain;
  std::string brain_light;  ///< of each of the brain's corners, 0 to 255
};
[[nodiscard]] PageBodies page_bodies(const HeadOfPage& head, const std::vector<PageDrawn>& scenes);

}  // namespace scalpmark::viewer
