#pragma once

#include <cstddef>

namespace scalpmark::window {

/// Who looks at the window: the one who enters the case, a class, a trainee who does the whole job, a
/// technician at the chair, one who looks back over all visits, a patient.
enum class Mode { worksheet, teach, practise, check, course, explain };
inline constexpr std::size_t mode_count = 6;

}  // namespace scalpmark::window
