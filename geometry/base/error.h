#pragma once

#include <stdexcept>
#include <string>

namespace scalpmark::geometry {

/// The one exception of this module. what() is a sentence fit to show a technician: what is wrong, where,
/// what to do.
class GeometryError : public std::runtime_error {
public:
  explicit GeometryError(const std::string& sentence) : std::runtime_error(sentence) {}
};

}  // namespace scalpmark::geometry
