#include "viewer/window/session/head_cache.h"

#include <algorithm>
#include <utility>

#include "geometry/base/text.h"
#include "viewer/window/jobs/head_job.h"

namespace scalpmark::window {

std::string head_key(const models::CaseFile& case_file) {
  std::string key;
  const auto add = [&](double value) { key += geometry::to_text(value, 6) + " "; };
  if (case_file.head.kind == models::HeadKind::generic) {
    key = "generic ";
    for (const auto& tape :
         {case_file.the_case.tape_mm.nasion_inion_mm, case_file.the_case.tape_mm.tragus_tragus_mm,
          case_file.the_case.tape_mm.circumference_mm})
      if (tape)
        add(*tape);
      else
        key += "- ";
    return key;
  }
  key = head_path(case_file.head, case_file.folder).string() + " ";
  if (case_file.head.unit) add(static_cast<double>(*case_file.head.unit));
  if (case_file.head.fiducials)
    for (const auto& point : {case_file.head.fiducials->nasion, case_file.head.fiducials->inion,
                              case_file.head.fiducials->left_tragus, case_file.head.fiducials->right_tragus})
      for (int i = 0; i < 3; ++i) add(point[i]);
  return key;
}

const PreparedHead* HeadCache::find(const models::CaseFile& case_file) const {
  const std::string key = head_key(case_file);
  for (const Remembered& one : heads_)
    if (one.key == key) return &one.head;
  return nullptr;
}

void HeadCache::remember(const models::CaseFile& case_file, PreparedHead head) {
  const std::string key = head_key(case_file);
  heads_.erase(
      std::remove_if(heads_.begin(), heads_.end(), [&](const Remembered& one) { return one.key == key; }),
      heads_.end());
  heads_.insert(heads_.begin(), {key, std::move(head)});
  if (heads_.size() > most) heads_.resize(most);
}

void HeadCache::set_thin(const std::shared_ptr<const models::LoadedHead>& head,
                         const std::optional<geometry::Surface>& thin) {
  for (Remembered& one : heads_)
    if (one.head.head == head) one.head.thin = thin;
}

void HeadCache::set_cortex(const std::shared_ptr<const models::LoadedHead>& head,
                           const std::shared_ptr<const models::LoadedHead>& with, const QStringList& notes) {
  for (Remembered& one : heads_) {
    if (one.head.head != head) continue;
    one.head.cortex_notes = notes;
    if (with) one.head.head = with;
  }
}

}  // namespace scalpmark::window
