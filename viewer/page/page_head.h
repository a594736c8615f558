#pragma once

#include <optional>
#include <string>

#include "geometry/plan/plan.h"
#include "models/cases/case_file.h"
#include "models/heads/load_head.h"
#include "viewer/page/face.h"

namespace scalpmark::viewer {

/// The head a page carries, with its case and its plan.
struct HeadOfPage {
  models::CaseFile file;  ///< as the page's kernel reads it: no visits; not where a patient's file lies
  models::LoadedHead loaded;
  geometry::Plan plan;      ///< what the page says and draws
  geometry::Surface drawn;  ///< the skin that is drawn
  bool for_kernel = true;   ///< a kernel can work on `loaded.head`
  std::string said;         ///< which head this is
  std::string how_far;      ///< what thinning has changed; mostly empty
};

/// At most so many triangles of a scan, for drawing and for the kernel alike.
inline constexpr std::size_t most_drawn = 20000;
/// Of the generic head for drawing; a page's kernel has all of it in itself.
inline constexpr std::size_t most_drawn_of_generic = 30000;

[[nodiscard]] HeadOfPage head_of_page(const models::CaseFile& case_file, const models::LoadedHead& loaded,
                                      const geometry::Plan& plan, PageHead head,
                                      const models::Progress& progress);

/// The skin above brow and ears: what lies above a plane through 25 mm over the nasion and 45 mm over the
/// tragi.
[[nodiscard]] geometry::Surface scalp_of(const geometry::Head& head);

}  // namespace scalpmark::viewer
