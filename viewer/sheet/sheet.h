#pragma once

#include <filesystem>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "geometry/plan/plan.h"
#include "models/cases/case_file.h"
#include "models/heads/load_head.h"
#include "viewer/sheet/content.h"
#include "viewer/sheet/views.h"

class QPagedPaintDevice;

namespace scalpmark::viewer {

enum class Paper { a4, letter };

/// "a4" or "letter", in capitals or not.
[[nodiscard]] std::optional<Paper> paper_named(std::string_view name);

/// The printed placement sheet as the bytes of a PDF file: text stays text, pictures are in it. Margins 15
/// mm, no text below 9 points. Uses the QGuiApplication there is, or one of its own that needs no display.
/// Refuses (ViewerError) a sheet that cannot be drawn.
[[nodiscard]] std::string sheet_pdf(const SheetContent& content, const std::vector<SheetView>& views,
                                    Paper paper);

/// The same onto a printer, or any other device with pages, on the paper it has. The pages are counted on a
/// PDF beforehand, so that nothing is printed twice. May run in a thread of its own where there is a
/// QGuiApplication.
void paint_sheet(const SheetContent& content, const std::vector<SheetView>& views, QPagedPaintDevice& onto);

/// Draws the views and writes the sheet, whole or not at all (models/files/safe_file.h). Needs Xvfb or a
/// display for the views (display.h).
void write_sheet(const std::filesystem::path& file, const models::CaseFile& case_file,
                 const models::LoadedHead& loaded, const geometry::Plan& plan, Paper paper);

}  // namespace scalpmark::viewer
