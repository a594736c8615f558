#include "viewer/window/session/head_cache.h"

#include <algorithm>
#include <utility>

#include "geometry/base/text.h"
#include "viewer/window/jobs/head_job.h"

namespace scalpmark::window {

std::string head_key(const models::CaseFile& kept) {
  std::string key;
  const auto add = [&](double value) { key += geometry::to_text(value, 6) + " "; };
  if (kept.head.kind == models::HeadKind::generic) {
    key = "generic ";
    for (const auto& tape : {kept.entered.tape_mm.nasion_inion_mm, kept.entered.tape_mm.tragus_tragus_mm,
                             kept.entered.tape_mm.circumference_mm})
      if (tape)
        add(*tape);
      else
        key += "- ";
    return key;
  }
  key = head_path(kept.head, kept.folder).string() + " ";
  if (kept.head.unit) add(static_cast<double>(*kept.head.unit));
  if (kept.head.fiducials)
    for (const auto& point : {kept.head.fiducials->nasion, kept.head.fiducials->inion,
                              kept.head.fiducials->left_tragus, kept.head.fiducials->right_tragus})
      for (int i = 0; i < 3; ++i) add(point[i]);
  return key;
}

const PreparedHead* HeadCache::find(const models::CaseFile& kept) const {
  const std::string key = head_key(kept);
  for (const Remembered& one : heads_)
    if (one.key == key) return &one.head;
  return nullptr;
}

void HeadCache::remember(const models::CaseFile& kept, PreparedHead head) {
  const std::string key = head_key(kept);
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
