#pragma once

#include <stdexcept>
#include <string>

namespace scalpmark::models {

/// The one exception of this module. what() is a sentence fit to show a technician: what is wrong, where
/// (file, key), what to do.
class ModelError : public std::runtime_error {
public:
  explicit ModelError(const std::string& sentence) : std::runtime_error(sentence) {}
};

}  // namespace scalpmark::models
