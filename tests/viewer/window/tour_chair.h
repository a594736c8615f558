#pragma once

#include <functional>

#include "tests/viewer/window/opened_window.h"

namespace scalpmark::window {

/// The screens of the chair, the wall and the patient: a coil in the hand, a case whose hotspot is not found
/// yet, a check with its move, the rules from beside, numbers across the room, projected screens, large
/// letters, what a patient sees, what one begins with.
void tour_chair(OpenedWindow& opened, const std::function<void(const char*)>& snap);

}  // namespace scalpmark::window
