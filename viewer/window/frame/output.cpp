#include "viewer/window/frame/output.h"

#include <QApplication>
#include <QClipboard>
#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QLocale>
#include <QPrintDialog>
#include <QPrinter>
#include <QPrinterInfo>
#include <utility>

#include "models/exports/export_file.h"
#include "viewer/page/page.h"
#include "viewer/window/frame/dialogs.h"
#include "viewer/window/frame/proposed_name.h"
#include "viewer/words/words.h"

namespace scalpmark::window {

namespace {

/// The name with its ending; empty where that is another file than the dialog asked about, and it is to stay.
QString with_ending(const QString& path, const QString& ending, const AskReplace& ask) {
  if (path.isEmpty() || path.endsWith(ending, Qt::CaseInsensitive)) return path;
  const QString whole = path + ending;
  return !QFileInfo::exists(whole) || ask(whole) ? whole : QString();
}

/// What a page is made of; nothing where it is not there, which is said.
std::optional<viewer::PageParts> page_parts(Output& output) {
  try {
    return viewer::read_page_parts();
  } catch (const std::exception& error) {
    emit output.notice(viewer::translated(error), NoticeBar::Kind::problem);
    return {};
  }
}

// Where the imperial system is in use, paper is Letter.
bool letter_is_usual() {
  return QLocale().measurementSystem() == QLocale::ImperialUSSystem;
}

}  // namespace

Output::Output(const Session& session, std::function<QImage()> picture, QWidget& window)
    : ask_printer([this] { return choose_printer(); }),
      ask_replace([&window](const QString& path) { return ask_about_replacing(&window, path); }),
      ask_page([&window](viewer::Face face, bool person) { return ask_about_page(&window, face, person); }),
      ask_face([&window] { return ask_about_face_in_export(&window); }),
      session_(session),
      picture_(std::move(picture)),
      window_(window) {}

std::unique_ptr<QPrinter> Output::choose_printer() {
  if (QPrinterInfo::availablePrinterNames().isEmpty()) {
    emit notice(
        tr("No printer is set up on this computer; save the sheet as a PDF and print that elsewhere."),
        NoticeBar::Kind::problem);
    return {};
  }
  auto printer = std::make_unique<QPrinter>(QPrinter::HighResolution);
  printer->setPageSize(QPageSize(letter_is_usual() ? QPageSize::Letter : QPageSize::A4));
  printer->setDocName(tr("Placement sheet"));
  printer->setCreator(QStringLiteral("Scalpmark"));
  QPrintDialog dialog(printer.get(), &window_);
  dialog.setWindowTitle(tr("Print the sheet"));
  dialog.setOption(QAbstractPrintDialog::PrintPageRange, false);
  if (dialog.exec() != QDialog::Accepted) return {};
  return printer;
}

bool Output::may_make_sheet() {
  if (!session_.is_ready()) return false;
  const QString why = why_no_sheet ? why_no_sheet() : QString();
  if (!why.isEmpty()) emit notice(why, NoticeBar::Kind::problem);
  return why.isEmpty();
}

bool Output::may_write(const QString& path, const std::string& format) {
  if (const QString problem = input_at(path, inputs_of(session_)); !problem.isEmpty()) {
    emit notice(problem, NoticeBar::Kind::problem);
    return false;
  }
  return may_replace(path, format, ask_replace);
}

OutputJob* Output::begin(const QString& done) {
  if (job_) {
    emit notice(tr("A sheet or picture is still being written; wait until it is done."),
                NoticeBar::Kind::problem);
    return nullptr;
  }
  emit notice({}, NoticeBar::Kind::problem);
  job_ = new OutputJob(this);
  connect(job_, &OutputJob::progressed, this, &Output::working);
  connect(job_, &OutputJob::finished, this, [this, done] {
    const QString without = job_->no_cortex();
    end(without.isEmpty() ? done : done + QLatin1Char(' ') + without, NoticeBar::Kind::done);
  });
  connect(job_, &OutputJob::failed, this,
          [this](const QString& sentence) { end(sentence, NoticeBar::Kind::problem); });
  return job_;
}

void Output::end(const QString& sentence, NoticeBar::Kind kind) {
  std::exchange(job_, nullptr)->deleteLater();
  emit notice(sentence, kind);
  emit over(kind == NoticeBar::Kind::done);
}

void Output::give_up() {
  if (!job_) return;
  job_->cancel();
  std::exchange(job_, nullptr)->deleteLater();
  emit over(false);
}

QString Output::proposed(const char* ending) const {
  return proposed_name(session_.case_file().the_case.label, session_.file(), QDate::currentDate(),
                       QString::fromLatin1(ending));
}

void Output::ask_paper(const QString& title, const char* ending, const QString& a4, const QString& letter,
                       const std::function<void(const QString&, viewer::Paper)>& save) {
  if (!may_make_sheet()) return;
  QString chosen = letter_is_usual() ? letter : a4;
  const QString path = with_ending(
      QFileDialog::getSaveFileName(&window_, title, proposed(ending), a4 + ";;" + letter, &chosen), ".pdf",
      ask_replace);
  if (!path.isEmpty()) save(path, chosen == letter ? viewer::Paper::letter : viewer::Paper::a4);
}

void Output::save_sheet() {
  ask_paper(tr("Save a sheet"), ".pdf", tr("Sheet on A4 (*.pdf)"), tr("Sheet on Letter (*.pdf)"),
            [this](const QString& path, viewer::Paper paper) { save_sheet_to(path, paper); });
}

void Output::save_sheet_to(const QString& path, viewer::Paper paper) {
  if (!may_make_sheet() || !may_write(path, "scalpmark-pdf")) return;
  if (OutputJob* job = begin(tr("The sheet is saved in %1.").arg(QDir::toNativeSeparators(path))))
    job->write_sheet(session_.case_file(), session_.head(), session_.template_files(), paper, path);
}

void Output::print_sheet() {
  if (!may_make_sheet()) return;
  std::unique_ptr<QPrinter> printer = ask_printer();
  if (!printer) return;
  if (OutputJob* job = begin(tr("The sheet is on its way to the printer.")))
    job->print_sheet(session_.case_file(), session_.head(), session_.template_files(), std::move(printer));
}

void Output::save_strips() {
  ask_paper(tr("Save strips of paper"), "-strips.pdf", tr("Strips on A4 (*.pdf)"),
            tr("Strips on Letter (*.pdf)"),
            [this](const QString& path, viewer::Paper paper) { save_strips_to(path, paper); });
}

void Output::save_strips_to(const QString& path, viewer::Paper paper) {
  if (!may_make_sheet() || !may_write(path, "scalpmark-pdf")) return;
  if (OutputJob* job = begin(tr("The strips are saved in %1.").arg(QDir::toNativeSeparators(path))))
    job->write_strips(session_.case_file(), session_.head(), paper, path);
}

viewer::Handout Output::handout(const QString& whose) const {
  return {picture_(), whose.toStdString(), viewer::patient_pages(session_.has_cortex(), patch_cm2)};
}

void Output::save_handout(const QString& whose) {
  if (!may_make_sheet()) return;
  const QString path =
      with_ending(QFileDialog::getSaveFileName(&window_, tr("Save the handout"), {}, tr("Handout (*.pdf)")),
                  ".pdf", ask_replace);
  if (!path.isEmpty())
    save_handout_to(path, letter_is_usual() ? viewer::Paper::letter : viewer::Paper::a4, whose);
}

void Output::save_handout_to(const QString& path, viewer::Paper paper, const QString& whose) {
  if (!may_make_sheet() || !may_write(path, "scalpmark-pdf")) return;
  const viewer::Handout page = handout(whose);
  if (OutputJob* job = begin(tr("The handout is saved in %1.").arg(QDir::toNativeSeparators(path))))
    job->write_handout(page, paper, path);
}

void Output::print_handout(const QString& whose) {
  if (!may_make_sheet()) return;
  const viewer::Handout page = handout(whose);
  std::unique_ptr<QPrinter> printer = ask_printer();
  if (!printer) return;
  if (OutputJob* job = begin(tr("The handout is on its way to the printer.")))
    job->print_handout(page, std::move(printer));
}

void Output::save_picture() {
  const QString path = with_ending(
      QFileDialog::getSaveFileName(&window_, tr("Save a picture"), proposed(".png"), tr("Pictures (*.png)")),
      ".png", ask_replace);
  if (!path.isEmpty()) save_picture_to(path);
}

void Output::save_picture_to(const QString& path) {
  if (!may_write(path, "scalpmark-png")) return;
  const QImage picture = picture_();
  if (OutputJob* job = begin(tr("The picture is saved in %1.").arg(QDir::toNativeSeparators(path))))
    job->write_picture(picture, path);
}

void Output::save_page(viewer::Face face) {
  if (!may_make_sheet() || !page_parts(*this)) return;
  const auto choice = ask_page(face, viewer::shows_a_person(session_.case_file()));
  if (!choice) return;
  // A patient's page is not named after the case.
  const QString name = choice->face == viewer::Face::patient ? QString() : proposed(".html");
  const QString path = with_ending(
      QFileDialog::getSaveFileName(&window_, tr("Save a page for a browser"), name, tr("Pages (*.html)")),
      ".html", ask_replace);
  if (!path.isEmpty()) save_page_to(path, *choice);
}

void Output::save_page_to(const QString& path, const PageChoice& choice) {
  if (!may_make_sheet() || !may_write(path, "scalpmark-html")) return;
  auto parts = page_parts(*this);
  if (!parts) return;
  const PageWanted page{choice.face, choice.head, std::move(*parts)};
  if (OutputJob* job = begin(tr("The page is saved in %1.").arg(QDir::toNativeSeparators(path))))
    job->write_page(session_.case_file(), session_.head(), session_.template_files(), page, path);
}

void Output::save_export() {
  if (!may_make_sheet()) return;
  const QString viewers = tr("For other viewers (*.glb)"), colours = tr("Mesh with colours (*.ply)"),
                print = tr("For a 3D printer (*.stl)"),
                flat = tr("For a 3D printer, cut flat above the brow (*.stl)");
  QString chosen = viewers;
  const QString path =
      QFileDialog::getSaveFileName(&window_, tr("Export the head"), proposed(""),
                                   QStringList{viewers, colours, print, flat}.join(";;"), &chosen);
  const QString ending = chosen == viewers ? ".glb" : chosen == colours ? ".ply" : ".stl";
  if (const QString whole = with_ending(path, ending, ask_replace); !whole.isEmpty())
    save_export_to(whole, chosen == flat);
}

void Output::save_export_to(const QString& path, bool above_brow) {
  const auto format = models::export_format_of(path.toStdString());
  if (!format || !may_make_sheet() || !may_write(path, models::own_format_of(*format))) return;
  const bool has_face = session_.case_file().head.kind != models::HeadKind::generic && !above_brow;
  if (has_face && !ask_face()) return;
  if (OutputJob* job = begin(tr("The head is saved in %1.").arg(QDir::toNativeSeparators(path))))
    job->write_export(session_.case_file(), session_.head(), *format, above_brow, path);
}

void Output::copy_picture() {
  QApplication::clipboard()->setImage(picture_());
}

}  // namespace scalpmark::window
