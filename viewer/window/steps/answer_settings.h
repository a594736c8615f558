#pragma once

#include <QWidget>

#include "viewer/window/fields/choice.h"
#include "viewer/window/fields/number_field.h"
#include "viewer/window/session/session.h"

namespace scalpmark::window {

/// How answers are counted: whose twitch, by which rule, and by what steps outputs are tried.
class AnswerSettingsFields : public QWidget {
  Q_OBJECT
public:
  explicit AnswerSettingsFields(Session& session, QWidget* parent = nullptr);
  void show_case();
  [[nodiscard]] Choice* counted() const { return counted_; }
  [[nodiscard]] Choice* rule() const { return rule_; }
  [[nodiscard]] PlainField* step() const { return step_; }
  [[nodiscard]] PlainField* fine() const { return fine_; }

signals:
  void refused(const QString& sentence);

private:
  PlainField* add_step(const QString& name, int geometry::AnswerSettings::*setting);
  QString change(const QString& what, const std::function<void(geometry::AnswerSettings&)>& edit);

  Session& session_;
  Choice *counted_, *rule_;
  PlainField *step_, *fine_;
};

}  // namespace scalpmark::window
