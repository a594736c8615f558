#include "geometry/plan/visit.h"

namespace scalpmark::geometry {

std::vector<std::size_t> out_of_order(const Visits& visits) {
  std::vector<std::size_t> found;
  for (std::size_t i = 1; i < visits.size(); ++i)
    if (visits[i]->date < visits[i - 1]->date) found.push_back(i);
  return found;
}

}  // namespace scalpmark::geometry
