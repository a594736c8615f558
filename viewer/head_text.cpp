#include "viewer/head_text.h"

#include "viewer/words.h"

namespace scalpmark::viewer {

std::string described(const std::string& description) {
  constexpr std::string_view scan = "scan ", mri = "MRI ";
  if (description == "generic head, as built in") return said(Words::tr("generic head, as built in"));
  if (description == "generic head, scaled to the tapes")
    return said(Words::tr("generic head, scaled to the tapes"));
  if (description.starts_with(scan))
    return said(Words::tr("scan %1", "and the file's name"), {description.substr(scan.size())});
  if (description.starts_with(mri))
    return said(Words::tr("MRI %1", "and the file's name"), {description.substr(mri.size())});
  return description;
}

std::string head_in_words(const models::CaseFile& kept, const models::LoadedHead& loaded) {
  std::string head = described(loaded.description);
  if (kept.head.kind != models::HeadKind::generic) return head;
  return said(Words::tr("%1: a drawing, not the patient"), {head});
}

}  // namespace scalpmark::viewer
