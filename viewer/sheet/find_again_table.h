#pragma once

#include "viewer/sheet/content.h"
#include "viewer/sheet/page.h"

namespace scalpmark::viewer {

/// The lengths by which the treatment's two marks are found again, for the first page in large type; no rows
/// where they are not worked out.
[[nodiscard]] SheetTable find_again_table(const geometry::Plan& plan);
/// Draws it over the whole width where the page is.
void draw_find_again(Pages& pages, const SheetTable& table);

}  // namespace scalpmark::viewer
