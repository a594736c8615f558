#pragma once

#include <QString>

#include "viewer/teach/mistake.h"

namespace scalpmark::window {

/// "What if the coil is turned?"
[[nodiscard]] QString what_if_title(const viewer::Mistake& mistake);

/// What was done wrong and where the pulse goes for it: centimetres with one decimal, whole degrees.
[[nodiscard]] QString what_if_sentence(const viewer::Spoiled& spoiled, const geometry::Case& entered);

}  // namespace scalpmark::window
