#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "geometry/base/message.h"

namespace scalpmark::models {

/// A message as bytes, for a pipe between two processes of the same program on one machine.
[[nodiscard]] std::string bytes_of(const geometry::Message& message);

/// The message again. Nothing where the bytes are none that bytes_of makes: cut short or followed by others,
/// messages in messages deeper than 8, more than 9 arguments, all of it longer than 64 KiB.
[[nodiscard]] std::optional<geometry::Message> message_from(std::string_view bytes);

}  // namespace scalpmark::models
