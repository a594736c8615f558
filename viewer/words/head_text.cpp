#include "viewer/words/head_text.h"

#include "models/cases/demo_case.h"
#include "viewer/words/words.h"

namespace scalpmark::viewer {

std::string head_in_words(const models::CaseFile& case_file, const models::LoadedHead& loaded) {
  std::string head = words(loaded.description);
  if (models::is_demo(case_file.the_case))
    return words(Words::tr("Demo case, not a real person: %1"), {head});
  if (case_file.head.kind != models::HeadKind::generic) return head;
  return words(Words::tr("%1: a drawing, not the patient"), {head});
}

}  // namespace scalpmark::viewer
