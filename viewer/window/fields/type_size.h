#pragma once

namespace scalpmark::window {

/// How large letters are in the window, and what holds them.
enum class TypeSize { usual, large, largest };

/// Times the usual size: 1, 1.25, 1.5.
[[nodiscard]] double factor_of(TypeSize size);

/// What suits a screen of so many dots to the inch (96 is what sizes are made for) until somebody chooses.
[[nodiscard]] TypeSize usual_type_size(double dots_per_inch);

}  // namespace scalpmark::window
