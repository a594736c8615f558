#pragma once

#include <QLabel>
#include <QPushButton>
#include <QWidget>
#include <optional>
#include <vector>

#include "viewer/window/session/session.h"
#include "viewer/window/stage_view/stage_content.h"
#include "viewer/words/patient_words.h"

namespace scalpmark::window {

/// What a patient reads beside the stage: whose head this is, and a page of plain words, one of three; no
/// jargon, no numbers.
class ExplainPanel : public QWidget {
  Q_OBJECT
public:
  explicit ExplainPanel(QWidget* parent = nullptr);
  /// Says whose head it is, by the case's label where that is wanted; and, where a brain is seen in the head,
  /// that it is not the patient's own.
  void show_case(const Session& session, bool with_label);
  /// The part of the brain that is lit is so large.
  void show_patch(double cm2);
  /// Begins with the first page.
  void begin() { go_to(0); }

  [[nodiscard]] int page() const { return at_; }
  [[nodiscard]] const std::vector<viewer::PatientPage>& pages() const { return pages_; }
  /// How large the lit part is; empty while none is.
  [[nodiscard]] const std::optional<double>& patch_cm2() const { return patch_cm2_; }
  [[nodiscard]] QString text() const { return text_->text(); }
  [[nodiscard]] QString whose() const { return whose_->text(); }
  [[nodiscard]] QPushButton* next() const { return next_; }
  [[nodiscard]] QPushButton* previous() const { return previous_; }
  [[nodiscard]] QPushButton* handout() const { return handout_; }

signals:
  void done();
  void picture_wanted();
  void handout_wanted();
  void print_wanted();
  void page_wanted();

protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

private:
  /// For the longest page, so that nothing is cut and the stage keeps its size from page to page.
  void make_room();
  void say();
  void go_to(int page);

  std::vector<viewer::PatientPage> pages_;
  int at_ = 0;
  QLabel *whose_, *heading_, *text_;
  QPushButton *previous_, *next_, *picture_, *handout_, *page_, *print_, *done_;
  bool brain_shown_ = false;
  std::optional<double> patch_cm2_;
};

/// What a patient sees: a plain head, the coil on the treatment site, both named, no numbers; the template's
/// brain in it where the session has one.
[[nodiscard]] StageContent explain_content(const Session& session);

}  // namespace scalpmark::window
