#pragma once

#include <string>

#include "geometry/plan/plan.h"
#include "models/cases/case_file.h"
#include "models/heads/load_head.h"
#include "viewer/page/face.h"
#include "viewer/page/page_parts.h"

namespace scalpmark::viewer {

/// Whether a page of this case would show a person's own face, so that its head is to be chosen first.
[[nodiscard]] bool shows_a_person(const models::CaseFile& case_file);

/// A case as a page: one HTML file that any browser opens from disk, with all it needs inside and no way to
/// the network. `loaded` and `plan` are the case's; the brain is left out where `loaded` has none. In the
/// language the program's texts are in. `head` counts where shows_a_person(). Seconds for a large scan.
/// Refuses (ViewerError) parts that no page can be made of; passes on the refusals of what it uses.
[[nodiscard]] std::string page_html(const models::CaseFile& case_file, const models::LoadedHead& loaded,
                                    const geometry::Plan& plan, Face face, PageHead head,
                                    const PageParts& parts, const models::Progress& progress = {});

}  // namespace scalpmark::viewer
