#include "models/cases/case_head.h"

namespace scalpmark::models {

LoadedHead load_head(const CaseFile& kept, const Progress& progress, const SkinReading& read) {
  LoadedHead loaded = load_head(kept.head, kept.folder, kept.entered.tape_mm, progress, read);
  loaded.notes.insert(loaded.notes.begin(), kept.notes.begin(), kept.notes.end());
  return loaded;
}

}  // namespace scalpmark::models
