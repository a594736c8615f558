#include "viewer/words/head_text.h"

#include "viewer/words/sentences.h"
#include "viewer/words/words.h"

namespace scalpmark::viewer {

std::string head_in_words(const models::CaseFile& kept, const models::LoadedHead& loaded) {
  std::string head = translated(loaded.description).toStdString();
  if (kept.head.kind != models::HeadKind::generic) return head;
  return said(Words::tr("%1: a drawing, not the patient"), {head});
}

}  // namespace scalpmark::viewer
