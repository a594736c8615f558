#pragma once

#include <QLabel>
#include <QWidget>

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

signals:
  void done();

private:
  void say(bool brain_shown);

  QLabel *heading_, *text_;
};

/// What a patient sees: a plain head, the coil on the treatment site or where it is held, no numbers; the
/// template's brain in it where the session has one.
[[nodiscard]] StageContent explain_content(const Session& session);

}  // namespace scalpmark::window
