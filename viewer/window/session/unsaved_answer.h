#pragma once

namespace scalpmark::window {

/// What may become of work that is not saved.
enum class UnsavedAnswer { save, discard, cancel };

}  // namespace scalpmark::window
