#pragma once

#include <exception>

#include "geometry/base/message.h"

namespace scalpmark::viewer {

/// What a caught exception says, in one sentence: its own message if it is one of ours; for those of the
/// system and of libraries, what of the machine gave out (memory, threads) and what to do, or else what they
/// say.
[[nodiscard]] geometry::Message message_of(const std::exception& error);

}  // namespace scalpmark::viewer
