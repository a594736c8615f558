#pragma once

#include <QImage>
#include <memory>
#include <vector>

#include "models/brain/template_brain.h"
#include "models/cases/case_file.h"
#include "models/exports/export_file.h"
#include "models/heads/load_head.h"
#include "viewer/page/face.h"
#include "viewer/page/page_parts.h"
#include "viewer/sheet/handout.h"
#include "viewer/sheet/sheet.h"
#include "viewer/window/jobs/background_work.h"

class QPrinter;

namespace scalpmark::window {

/// Whom a page is for, which head it has, and what it is made of.
struct PageWanted {
  viewer::Face face = viewer::Face::technician;
  viewer::PageHead head = viewer::PageHead::generic;
  viewer::PageParts parts;
};

/// Makes a sheet, strips, a picture, a page or an export file while the window goes on answering. What is
/// drawn by OpenGL is drawn in the window's thread, one view at a time between its events; everything else in
/// a thread of its own. One job per object. Files are written whole or not at all; a cancelled job leaves
/// none.
class OutputJob : public BackgroundWork {
  Q_OBJECT
public:
  explicit OutputJob(QObject* parent = nullptr);
  ~OutputJob() override;

  /// The sheet of a case as a PDF file. A head without a cortex gets the one of `brain`, where it can.
  void write_sheet(const models::CaseFile& case_file, const models::LoadedHead& loaded,
                   const models::TemplateFiles& brain, viewer::Paper paper, const QString& file);
  /// The same on paper.
  void print_sheet(const models::CaseFile& case_file, const models::LoadedHead& loaded,
                   const models::TemplateFiles& brain, std::unique_ptr<QPrinter> printer);
  /// Why the sheet says nothing of a cortex, once finished; empty where it does.
  [[nodiscard]] const QString& no_cortex() const { return no_cortex_; }
  void write_handout(const viewer::Handout& handout, viewer::Paper paper, const QString& file);
  void print_handout(const viewer::Handout& handout, std::unique_ptr<QPrinter> printer);
  void write_picture(const QImage& picture, const QString& file);
  /// A page for a browser (viewer/page/page.h); a patient's gets the cortex of `brain`, where it can.
  void write_page(const models::CaseFile& case_file, const models::LoadedHead& loaded,
                  const models::TemplateFiles& brain, const PageWanted& page, const QString& file);
  /// Strips of paper at true size (viewer/sheet/strips_pdf.h).
  void write_strips(const models::CaseFile& case_file, const models::LoadedHead& loaded, viewer::Paper paper,
                    const QString& file);
  /// A case's head with its marks (viewer/exports).
  void write_export(const models::CaseFile& case_file, const models::LoadedHead& loaded,
                    models::ExportFormat format, bool above_brow, const QString& file);

private:
  /// What is done with the sheet's text and views once they are there; runs in the thread.
  using Put = std::function<void(const viewer::SheetContent&, const std::vector<viewer::SheetView>&)>;
  void make_sheet(const models::CaseFile& case_file, const models::LoadedHead& loaded,
                  const models::TemplateFiles& brain, Put put);
  void draw_next_view();

  struct Sheet;
  std::shared_ptr<Sheet> sheet_;
  QString no_cortex_;
};

}  // namespace scalpmark::window
