#include "models/cases/case_head.h"

namespace scalpmark::models {

LoadedHead load_head(const CaseFile& case_file, const Progress& progress, const SkinReading& read) {
  LoadedHead loaded = load_head(case_file.head, case_file.folder, case_file.the_case.tape_mm, progress, read);
  loaded.notes.insert(loaded.notes.begin(), case_file.notes.begin(), case_file.notes.end());
  return loaded;
}

}  // namespace scalpmark::models
