#pragma once

#include "geometry/base/error.h"

namespace scalpmark::viewer {

/// The one exception of this module: what is wrong, where, what to do.
class ViewerError : public geometry::Refusal {
public:
  using Refusal::Refusal;
};

}  // namespace scalpmark::viewer
