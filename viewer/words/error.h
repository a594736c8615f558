#pragma once

#include <stdexcept>
#include <string>

namespace scalpmark::viewer {

/// The one exception of this module. what() is a sentence fit to show a technician: what is wrong, where,
/// what to do.
class ViewerError : public std::runtime_error {
public:
  explicit ViewerError(const std::string& sentence) : std::runtime_error(sentence) {}
};

}  // namespace scalpmark::viewer
