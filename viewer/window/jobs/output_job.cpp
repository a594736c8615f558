#include "viewer/window/jobs/output_job.h"

#include <QBuffer>
#include <QPrinter>
#include <QTimer>

#include "geometry/base/message.h"
#include "geometry/hands/strips.h"
#include "geometry/plan/plan_cortex.h"
#include "geometry/plan/solve.h"
#include "models/brain/add_cortex.h"
#include "models/files/own_files.h"
#include "models/files/safe_file.h"
#include "viewer/exports/export_scene.h"
#include "viewer/page/page.h"
#include "viewer/sheet/date.h"
#include "viewer/sheet/strips_pdf.h"
#include "viewer/words/error.h"
#include "viewer/words/words.h"

namespace scalpmark::window {

struct OutputJob::Sheet {
  models::CaseFile case_file;
  models::LoadedHead loaded;
  Put put;
  geometry::Plan plan;
  std::shared_ptr<const geometry::Tolerance> by_hand;
  std::unique_ptr<viewer::SheetViews> drawer;  // lives and ends in the window's thread
  std::vector<viewer::SheetView> views;
};

OutputJob::OutputJob(QObject* parent) : BackgroundWork(parent) {}

OutputJob::~OutputJob() {
  stop();
}

void OutputJob::write_sheet(const models::CaseFile& case_file, const models::LoadedHead& loaded,
                            const models::TemplateFiles& brain, viewer::Paper paper, const QString& file) {
  make_sheet(case_file, loaded, brain, [this, paper, file](const auto& content, const auto& views) {
    const std::string bytes = viewer::sheet_pdf(content, views, paper);
    tell(tr("Writing the sheet"), 0.95);
    models::write_whole(file.toStdString(), bytes);
  });
}

void OutputJob::print_sheet(const models::CaseFile& case_file, const models::LoadedHead& loaded,
                            const models::TemplateFiles& brain, std::unique_ptr<QPrinter> printer) {
  const std::shared_ptr<QPrinter> onto = std::move(printer);
  make_sheet(case_file, loaded, brain, [onto](const auto& content, const auto& views) {
    viewer::paint_sheet(content, views, *onto);
    if (onto->printerState() == QPrinter::Error)
      throw viewer::ViewerError(geometry::Message::of(
          "The printer %1 did not take the sheet; see whether it is switched on, or save the sheet as a PDF.",
          onto->printerName().toStdString()));
  });
}

void OutputJob::make_sheet(const models::CaseFile& case_file, const models::LoadedHead& loaded,
                           const models::TemplateFiles& brain, Put put) {
  sheet_ = std::make_shared<Sheet>(Sheet{case_file, loaded, std::move(put), {}, {}, nullptr, {}});
  run(
      [this, sheet = sheet_, brain] {
        tell(tr("Making the sheet"), 0.05);
        if (!sheet->loaded.cortex) {
          sheet->loaded.notes.clear();
          models::add_cortex(sheet->loaded, brain, [this](const geometry::Message&, double fraction) {
            tell(tr("Making the sheet"), 0.05 + 0.1 * fraction);
          });
          if (!sheet->loaded.cortex && !sheet->loaded.notes.empty())
            no_cortex_ = viewer::translated(sheet->loaded.notes.front());
        }
        // With tape distances, whether or not the window has them by now.
        sheet->plan = geometry::with_cortex(geometry::solve(sheet->loaded.head, sheet->case_file.the_case,
                                                            geometry::TapeDistances::each_path),
                                            sheet->loaded.cortex.get());
        sheet->by_hand = viewer::off_by_hand(sheet->loaded.head, sheet->case_file.the_case, sheet->plan);
      },
      [this] { draw_next_view(); });
}

void OutputJob::draw_next_view() {
  if (is_cancelled()) return;
  Sheet& s = *sheet_;
  const auto drawn = static_cast<int>(s.views.size());
  emit progressed(tr("Drawing the sheet's views"), 0.2 + 0.2 * drawn);
  try {
    if (!s.drawer)
      s.drawer = std::make_unique<viewer::SheetViews>(s.loaded.head, s.case_file.the_case, s.plan, s.by_hand);
    else
      s.views.push_back(s.drawer->draw(drawn));
  } catch (const std::exception& error) {
    s.drawer.reset();
    emit failed(viewer::translated(error));
    return;
  }
  if (static_cast<int>(s.views.size()) < viewer::SheetViews::count) {
    // The window's own events come first.
    QTimer::singleShot(0, this, &OutputJob::draw_next_view);
    return;
  }
  s.drawer.reset();
  run([this, sheet = sheet_] {
    tell(tr("Writing the sheet"), 0.85);
    sheet->put(viewer::sheet_content(sheet->case_file, sheet->loaded, sheet->plan, viewer::date_today(),
                                     sheet->by_hand),
               sheet->views);
  });
}

void OutputJob::write_handout(const viewer::Handout& handout, viewer::Paper paper, const QString& file) {
  run([this, handout, paper, file] {
    tell(tr("Writing the handout"), 0.3);
    models::write_whole(file.toStdString(), viewer::handout_pdf(handout, paper));
  });
}

void OutputJob::print_handout(const viewer::Handout& handout, std::unique_ptr<QPrinter> printer) {
  const std::shared_ptr<QPrinter> onto = std::move(printer);
  run([handout, onto] { viewer::paint_handout(handout, *onto); });
}

void OutputJob::write_page(const models::CaseFile& case_file, const models::LoadedHead& loaded,
                           const models::TemplateFiles& brain, const PageWanted& page, const QString& file) {
  run([this, case_file, head = loaded, brain, page, file]() mutable {
    tell(tr("Making the page"), 0.05);
    if (page.face == viewer::Face::patient && !head.cortex) models::add_cortex(head, brain);
    const geometry::Plan plan = geometry::with_cortex(
        geometry::solve(head.head, case_file.the_case, geometry::TapeDistances::each_path),
        head.cortex.get());
    const std::string bytes = viewer::page_html(case_file, head, plan, page.face, page.head, page.parts,
                                                [this](const geometry::Message&, double fraction) {
                                                  tell(tr("Making the page"), 0.3 + 0.6 * fraction);
                                                });
    tell(tr("Writing the page"), 0.95);
    models::write_whole(file.toStdString(), bytes);
  });
}

void OutputJob::write_strips(const models::CaseFile& case_file, const models::LoadedHead& loaded,
                             viewer::Paper paper, const QString& file) {
  run([this, the_case = case_file.the_case, head = loaded.head, paper, file] {
    tell(tr("Making the strips"), 0.1);
    const auto plan = geometry::solve(head, the_case, geometry::TapeDistances::left_out);
    viewer::StripsContent content = viewer::strips_content(the_case, plan);
    content.date = viewer::date_today();
    const std::string bytes = viewer::strips_pdf(geometry::strips(head, the_case, plan), content, paper);
    tell(tr("Writing the strips"), 0.9);
    models::write_whole(file.toStdString(), bytes);
  });
}

void OutputJob::write_export(const models::CaseFile& case_file, const models::LoadedHead& loaded,
                             models::ExportFormat format, bool above_brow, const QString& file) {
  run([this, case_file, loaded, format, above_brow, file] {
    tell(tr("Making the head solid"), 0.1);
    const auto plan = geometry::solve(loaded.head, case_file.the_case, geometry::TapeDistances::left_out);
    const std::string bytes = viewer::export_plan(loaded.head, case_file.the_case, plan, format, above_brow);
    tell(tr("Writing the head"), 0.9);
    models::write_whole(file.toStdString(), bytes);
  });
}

void OutputJob::write_picture(const QImage& picture, const QString& file) {
  run([this, picture, file] {
    tell(tr("Writing the picture"), 0.1);
    QByteArray bytes;
    QBuffer out(&bytes);
    out.open(QIODevice::WriteOnly);
    QImage signed_picture = picture;
    signed_picture.setText(QStringLiteral("Software"), QString::fromLatin1(models::own_name));
    if (!signed_picture.save(&out, "PNG"))
      throw viewer::ViewerError(
          geometry::Message::of("The picture could not be turned into a PNG file; try again."));
    tell(tr("Writing the picture"), 0.8);
    models::write_whole(file.toStdString(), bytes.toStdString());
  });
}

}  // namespace scalpmark::window
