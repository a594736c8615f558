#pragma once

#include <functional>
#include <string>
#include <vector>

#include "geometry/base/message.h"
#include "geometry/surface/surface.h"

namespace scalpmark::models {

/// A skin read from a file, and what had to be done to it, one sentence each ("kept the largest of 3
/// pieces").
struct SkinImport {
  geometry::Surface skin;
  std::vector<geometry::Message> notes;
};

/// Called now and then during long work with what is being done and how far it is (0 to 1). May be empty.
using Progress = std::function<void(const geometry::Message& what, double fraction)>;

}  // namespace scalpmark::models
