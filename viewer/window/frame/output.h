#pragma once

#include <QImage>
#include <QObject>
#include <QWidget>
#include <functional>
#include <memory>
#include <optional>

#include "viewer/window/frame/bars.h"
#include "viewer/window/frame/page_question.h"
#include "viewer/window/frame/save_target.h"
#include "viewer/window/jobs/output_job.h"
#include "viewer/window/session/session.h"

class QPrinter;

namespace scalpmark::window {

/// Pictures, sheets and heads to hand on, as files and on paper: one at a time, made in the background. Says
/// when one is there, or why it is not.
class Output : public QObject {
  Q_OBJECT
public:
  /// `picture` is the stage as it is now; `window` stands under the dialogs.
  Output(const Session& session, std::function<QImage()> picture, QWidget& window);

  std::function<std::unique_ptr<QPrinter>()> ask_printer;  ///< nothing: not to be printed
  AskReplace ask_replace;
  std::function<std::optional<PageChoice>(viewer::Face face, bool shows_a_person)> ask_page;
  std::function<bool()> ask_face;  ///< whether a scanned person's face may go into a file that is handed on
  std::function<QString()> why_no_sheet;  ///< what is to be answered before a sheet leaves; mostly nothing

  void save_sheet();
  void save_sheet_to(const QString& path, viewer::Paper paper);
  void print_sheet();
  /// Strips of paper at true size, marked for this head.
  void save_strips();
  void save_strips_to(const QString& path, viewer::Paper paper);
  /// How large the lit part of the brain is, for the handout; empty while none is.
  std::optional<double> patch_cm2;
  /// One page for a patient, with the picture there is now; `whose`: what stands under it.
  void save_handout(const QString& whose);
  void save_handout_to(const QString& path, viewer::Paper paper, const QString& whose);
  void print_handout(const QString& whose);
  void save_picture();
  void save_picture_to(const QString& path);
  void copy_picture();
  /// A page for a browser: asks whom it is for, `face` chosen at first, and, of a scan, which head it shows.
  void save_page(viewer::Face face);
  void save_page_to(const QString& path, const PageChoice& choice);
  /// The head with its marks for other viewers or a printer, by the ending: .glb, .ply, .stl.
  void save_export();
  void save_export_to(const QString& path, bool above_brow);

  [[nodiscard]] bool is_writing() const { return job_ != nullptr; }
  void give_up();

signals:
  void working(const QString& what, double fraction);
  /// Nothing is being written any more; what became of it was said.
  void over(bool written);
  void notice(const QString& sentence, NoticeBar::Kind kind);

private:
  [[nodiscard]] std::unique_ptr<QPrinter> choose_printer();
  [[nodiscard]] bool may_make_sheet();
  [[nodiscard]] viewer::Handout handout(const QString& whose) const;
  /// Whether a result of that kind may go there; says why not, and asks.
  [[nodiscard]] bool may_write(const QString& path, const std::string& format);
  /// The name a dialog proposes.
  [[nodiscard]] QString proposed(const char* ending) const;
  /// Asks for a file and for its paper, and saves.
  void ask_paper(const QString& title, const char* ending, const QString& a4, const QString& letter,
                 const std::function<void(const QString&, viewer::Paper)>& save);
  OutputJob* begin(const QString& done);
  void end(const QString& sentence, NoticeBar::Kind kind);

  const Session& session_;
  std::function<QImage()> picture_;
  QWidget& window_;
  OutputJob* job_ = nullptr;  // a child while it is at work
};

}  // namespace scalpmark::window
