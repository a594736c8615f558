#pragma once

namespace scalpmark::window {

/// Who looks at the window: the one who enters the case, a class, a technician at the chair, a patient.
enum class Mode { worksheet, teach, check, explain };

}  // namespace scalpmark::window
