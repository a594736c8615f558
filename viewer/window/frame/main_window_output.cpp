#include <QApplication>
#include <QClipboard>
#include <QDir>
#include <QFileDialog>
#include <QLocale>
#include <QPrintDialog>
#include <QPrinter>
#include <QPrinterInfo>

#include "viewer/window/frame/main_window.h"

// Pictures and sheets, as files and on paper.

namespace scalpmark::window {

namespace {

QString with_ending(const QString& path, const QString& ending) {
  return path.isEmpty() || path.endsWith(ending, Qt::CaseInsensitive) ? path : path + ending;
}

// Where the imperial system is in use, paper is Letter.
bool letter_is_usual() {
  return QLocale().measurementSystem() == QLocale::ImperialUSSystem;
}

}  // namespace

std::unique_ptr<QPrinter> MainWindow::choose_printer() {
  if (QPrinterInfo::availablePrinterNames().isEmpty()) {
    show_notice(
        tr("No printer is set up on this computer; save the sheet as a PDF and print that elsewhere."));
    return {};
  }
  auto printer = std::make_unique<QPrinter>(QPrinter::HighResolution);
  printer->setPageSize(QPageSize(letter_is_usual() ? QPageSize::Letter : QPageSize::A4));
  printer->setDocName(tr("Placement sheet"));
  printer->setCreator(QStringLiteral("Scalpmark"));
  QPrintDialog dialog(printer.get(), this);
  dialog.setWindowTitle(tr("Print the sheet"));
  dialog.setOption(QAbstractPrintDialog::PrintPageRange, false);
  if (dialog.exec() != QDialog::Accepted) return {};
  return printer;
}

OutputJob* MainWindow::new_output(const QString& done) {
  if (output_) {
    show_notice(tr("A sheet or picture is still being written; wait until it is done."));
    return nullptr;
  }
  show_notice({});
  output_ = new OutputJob(this);
  const auto over = [this](const QString& sentence, NoticeBar::Kind kind) {
    std::exchange(output_, nullptr)->deleteLater();
    if (!session_.is_working()) work_->rest();
    notice_->say(sentence, kind);
    if (std::exchange(close_when_written_, false) && kind == NoticeBar::Kind::done) close();
  };
  connect(output_, &OutputJob::progressed, work_, &WorkBar::show_work);
  connect(output_, &OutputJob::finished, this, [this, over, done] {
    const QString without = output_->no_cortex();
    over(without.isEmpty() ? done : done + QLatin1Char(' ') + without, NoticeBar::Kind::done);
  });
  connect(output_, &OutputJob::failed, this,
          [over](const QString& sentence) { over(sentence, NoticeBar::Kind::problem); });
  return output_;
}

void MainWindow::give_up_output() {
  if (!output_) return;
  output_->cancel();
  std::exchange(output_, nullptr)->deleteLater();
  close_when_written_ = false;
  if (!session_.is_working()) work_->rest();
}

void MainWindow::save_sheet() {
  if (!session_.is_ready()) return;
  const QString a4 = tr("Sheet on A4 (*.pdf)"), letter = tr("Sheet on Letter (*.pdf)");
  QString chosen = letter_is_usual() ? letter : a4;
  const QString path = with_ending(
      QFileDialog::getSaveFileName(this, tr("Save a sheet"), {}, a4 + ";;" + letter, &chosen), ".pdf");
  if (!path.isEmpty()) save_sheet_to(path, chosen == letter ? viewer::Paper::letter : viewer::Paper::a4);
}

void MainWindow::save_sheet_to(const QString& path, viewer::Paper paper) {
  if (!session_.is_ready()) return;
  if (OutputJob* job = new_output(tr("The sheet is saved in %1.").arg(QDir::toNativeSeparators(path))))
    job->write_sheet(session_.kept(), session_.head(), session_.template_files(), paper, path);
}

void MainWindow::print_sheet() {
  if (!session_.is_ready()) return;
  std::unique_ptr<QPrinter> printer = ask_printer();
  if (!printer) return;
  if (OutputJob* job = new_output(tr("The sheet is on its way to the printer.")))
    job->print_sheet(session_.kept(), session_.head(), session_.template_files(), std::move(printer));
}

void MainWindow::save_picture() {
  const QString path = with_ending(
      QFileDialog::getSaveFileName(this, tr("Save a picture"), {}, tr("Pictures (*.png)")), ".png");
  if (!path.isEmpty()) save_picture_to(path);
}

void MainWindow::save_picture_to(const QString& path) {
  const QImage picture = stage_->picture();
  if (OutputJob* job = new_output(tr("The picture is saved in %1.").arg(QDir::toNativeSeparators(path))))
    job->write_picture(picture, path);
}

void MainWindow::copy_picture() {
  QApplication::clipboard()->setImage(stage_->picture());
}

}  // namespace scalpmark::window
