#include "models/heads/built_in_head.h"

#include "models/files/error.h"
#include "models/generic/generic_head.h"

namespace scalpmark::models {

LoadedHead built_in_head(const geometry::MeasuredTapes& tapes) {
  if (!tapes.nasion_inion_mm && !tapes.tragus_tragus_mm && !tapes.circumference_mm)
    return {generic_head(), Message::of("generic head, as built in"), {}};
  return {geometry::scale_to_tapes(generic_head(), tapes).head,
          Message::of("generic head, scaled to the tapes"),
          {}};
}

}  // namespace scalpmark::models
