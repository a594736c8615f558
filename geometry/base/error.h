#pragma once

#include <stdexcept>
#include <string>
#include <utility>

#include "geometry/base/message.h"

namespace scalpmark::geometry {

/// What every exception of ours carries: a sentence fit to show a technician (what is wrong, where, what to
/// do) as a message for any language. what() is its English.
class Refusal : public std::runtime_error {
public:
  explicit Refusal(Message message) : std::runtime_error(english(message)), message_(std::move(message)) {}
  [[nodiscard]] const Message& message() const { return message_; }

private:
  Message message_;
};

/// The one exception of this module.
class GeometryError : public Refusal {
public:
  using Refusal::Refusal;
};

}  // namespace scalpmark::geometry
