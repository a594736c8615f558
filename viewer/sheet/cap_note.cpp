#include "viewer/sheet/cap_note.h"

#include "geometry/base/error.h"
#include "geometry/hands/cap.h"
#include "viewer/words/cap_words.h"
#include "viewer/words/words.h"

namespace scalpmark::viewer {

std::string cap_note(const geometry::Head& head, const geometry::CapSettings& cap) {
  try {
    const auto heights = geometry::brim_heights(head, geometry::cap_on(head, cap.brim_over_nasion_mm));
    return words(Words::tr("Cap, its arrow down the nose: %1"), {words(brim_sentence(heights))});
  } catch (const geometry::GeometryError&) {
    return "";
  }
}

}  // namespace scalpmark::viewer
