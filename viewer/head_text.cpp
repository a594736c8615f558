#include "viewer/head_text.h"

namespace scalpmark::viewer {

std::string head_in_words(const models::CaseFile& kept, const models::LoadedHead& loaded) {
  if (kept.head.kind != models::HeadKind::generic) return loaded.description;
  return loaded.description + ": a drawing, not the patient";
}

}  // namespace scalpmark::viewer
