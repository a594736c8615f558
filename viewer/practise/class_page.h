#pragma once

#include <filesystem>
#include <memory>
#include <string>
#include <vector>

#include "geometry/hands/tolerance.h"
#include "viewer/practise/class_results.h"
#include "viewer/sheet/sheet.h"
#include "viewer/sheet/views.h"
#include "viewer/stage/scene/camera.h"
#include "viewer/stage/scene/shown.h"

namespace scalpmark::viewer {

/// The class page is one page: the head with every trainee's pulse on it, a table by step with medians and
/// quartiles, what trained people do, what was left out, and that nothing of it is a certificate.

/// What the class view and the page's picture show on the stage: the skin, the aim, a spot for the pulse of
/// each trainee's last attempt, and where hands could put it. No names.
[[nodiscard]] Shown class_shown(const ClassResults& results,
                                const std::shared_ptr<const geometry::Tolerance>& hands);
/// From where: straight down on the site, so that distances there are seen as they are.
[[nodiscard]] Gaze class_gaze(const ClassResults& results);

/// The head as a picture for the page. Needs Xvfb or a display (display.h).
[[nodiscard]] SheetView class_picture(const ClassResults& results,
                                      const std::shared_ptr<const geometry::Tolerance>& hands);

/// The bytes of a PDF file of one page. May run in a thread of its own where there is a QGuiApplication.
/// Refuses (ViewerError) what does not fit on a page.
[[nodiscard]] std::string class_pdf(const ClassResults& results, const SheetView& picture,
                                    const std::shared_ptr<const geometry::Tolerance>& hands, Paper paper);

/// Draws the picture and writes the page, whole or not at all.
void write_class_page(const std::filesystem::path& file, const ClassResults& results, Paper paper);

}  // namespace scalpmark::viewer
