#pragma once

#include <QFrame>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include "viewer/window/stage_view/stage_content.h"

namespace scalpmark::window {

/// One step of the worksheet: a numbered heading that opens and closes it, one line that says what to do with
/// tape and pencil, its fields, and room for a sentence. Closed, the heading says in short what was entered.
class Step : public QFrame {
  Q_OBJECT
public:
  Step(int number, const QString& title, QWidget* parent = nullptr);

  void set_open(bool open);
  [[nodiscard]] bool is_open() const { return open_; }
  void set_hint(const QString& hint);
  void set_summary(const QString& summary);
  /// Something that went wrong, or nothing.
  void set_problem(const QString& sentence);
  [[nodiscard]] QString problem() const { return problem_->text(); }
  /// Something worth knowing, or nothing.
  void set_note(const QString& sentence);
  /// The step the stage shows is set off from the others.
  void set_current(bool current);
  /// What the stage shows of this step, with the coil as it is held. Asked for once there is a plan.
  [[nodiscard]] virtual StageContent stage_content(const HeldCoil& coil) const = 0;
  [[nodiscard]] QPushButton* heading() const { return heading_; }
  [[nodiscard]] QString title() const { return title_; }

signals:
  /// Opened, or worked in: the stage is to show this step.
  void entered();
  /// Something that went wrong is said now; it is to be seen.
  void said_problem(QWidget* where);

protected:
  /// Where the fields go.
  [[nodiscard]] QVBoxLayout* fields() const { return fields_; }
  void focusInEvent(QFocusEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  /// Skin and labels, and these.
  [[nodiscard]] static StageContent content_with(std::set<viewer::Thing> things, const HeldCoil& coil);

private:
  void label_heading();

  QString title_, summary_;
  int number_;
  bool open_ = false;
  QPushButton* heading_;
  QLabel *hint_, *note_, *problem_;
  QWidget* body_;
  QVBoxLayout* fields_;
};

}  // namespace scalpmark::window
