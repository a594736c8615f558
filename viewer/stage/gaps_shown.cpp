#include "viewer/stage/gaps_shown.h"

namespace scalpmark::viewer {

std::shared_ptr<const GapsShown> gaps_under(const geometry::Head& head, const geometry::Case& entered,
                                            const geometry::Placement& placement) {
  auto gaps = std::make_shared<GapsShown>();
  gaps->contact = geometry::contact(head, entered.coil, placement.pose());
  gaps->map = geometry::gap_map(head.skin(), entered.coil.model, gaps->contact);
  return gaps;
}

}  // namespace scalpmark::viewer
