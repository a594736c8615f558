#pragma once

#include <QLabel>
#include <QWidget>
#include <optional>

#include "viewer/window/session/session.h"
#include "viewer/window/stage_view/stage_content.h"

namespace scalpmark::window {

/// What a patient reads beside the stage: whose head this is, and two sentences; no jargon, no numbers.
class ExplainPanel : public QWidget {
  Q_OBJECT
public:
  explicit ExplainPanel(QWidget* parent = nullptr);
  /// Says whose head it is, by the case's label where that is wanted; and, where a brain is seen in the head,
  /// that it is not the patient's own.
  void show_case(const Session& session, bool with_label);
  /// The part of the brain that is lit is so large.
  void show_patch(double cm2);

signals:
  void done();

private:
  void say();

  QLabel *heading_, *text_;
  bool brain_shown_ = false;
  std::optional<double> patch_cm2_;
};

/// What a patient sees: a plain head, the coil on the treatment site or where it is held, no numbers; the
/// template's brain in it where the session has one.
[[nodiscard]] StageContent explain_content(const Session& session, const HeldCoil& coil);

}  // namespace scalpmark::window
