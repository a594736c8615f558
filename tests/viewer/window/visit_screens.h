#pragma once

#include <functional>
#include <string>
#include <vector>

#include "tests/viewer/window/opened_window.h"

namespace scalpmark::window {

/// A screen of a visit or of a course, and how to get there from the one before.
struct VisitScreen {
  std::string name;
  std::function<void(OpenedWindow&)> go_there;
};
[[nodiscard]] std::vector<VisitScreen> visit_screens();

}  // namespace scalpmark::window
