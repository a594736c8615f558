#pragma once

#include <cstddef>

namespace scalpmark::window {

/// Who looks at the window: the one who enters the case, a class, a technician at the
/// chair, one who looks back over all visits, a patient.
enum class Mode { worksheet, teach, check, course, explain };
inline constexpr std::size_t mode_count = 5;

}  // namespace scalpmark::window
