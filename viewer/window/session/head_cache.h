#pragma once

#include <QStringList>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "models/cases/case_file.h"
#include "models/heads/load_head.h"

namespace scalpmark::window {

/// A head as it was loaded, and what was made of it since.
struct PreparedHead {
  std::shared_ptr<const models::LoadedHead> head;
  std::optional<geometry::Surface> thin;  ///< its skin thinned for drawing in motion, once that is there
  QStringList cortex_notes;  ///< sentences about its cortex, or about why one that was wanted is missing
};

/// What tells one head from another: source and, for the generic head, the tapes it is scaled to.
[[nodiscard]] std::string head_key(const models::CaseFile& case_file);

/// The last few heads, so that going back to one is immediate: one each for what head_key() tells apart, the
/// latest first.
class HeadCache {
public:
  static constexpr std::size_t most = 4;  // a large head with its distance fields takes some 100 MB

  /// The head of a case; null where it is not remembered.
  [[nodiscard]] const PreparedHead* find(const models::CaseFile& case_file) const;
  void remember(const models::CaseFile& case_file, PreparedHead head);  // a copy: it may be one of those here
  void set_thin(const std::shared_ptr<const models::LoadedHead>& head,
                const std::optional<geometry::Surface>& thin);
  /// What came of bringing a cortex under a head: sentences, and the head with it (null: there is none).
  void set_cortex(const std::shared_ptr<const models::LoadedHead>& head,
                  const std::shared_ptr<const models::LoadedHead>& with, const QStringList& notes);
  void clear() { heads_.clear(); }

private:
  struct Remembered {
    std::string key;
    PreparedHead head;
  };
  std::vector<Remembered> heads_;
};

}  // namespace scalpmark::window
