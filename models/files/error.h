#pragma once

#include "geometry/base/error.h"

namespace scalpmark::models {

using geometry::Message;

/// The one exception of this module: what is wrong, where (file, key), what to do.
class ModelError : public geometry::Refusal {
public:
  using Refusal::Refusal;
};

}  // namespace scalpmark::models
