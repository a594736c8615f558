#pragma once

#include <string>
#include <vector>

#include "viewer/page/page_data.h"

namespace scalpmark::viewer {

/// What stands in the browser's tab: of a patient's page, nothing of whose it is.
[[nodiscard]] std::string page_title(const HeadOfPage& head, Face face);

/// A page's body as HTML, up to its scripts: all that is read in it stands here, so that it can be read where
/// no script runs, printed, and read out.
[[nodiscard]] std::string page_body(const HeadOfPage& head, const std::vector<PageDrawn>& scenes, Face face,
                                    const std::string& licences);

}  // namespace scalpmark::viewer
