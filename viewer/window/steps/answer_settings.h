#pragma once

#include <QSpinBox>
#include <QWidget>

#include "viewer/window/fields/choice.h"
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
  [[nodiscard]] QSpinBox* step() const { return step_; }
  [[nodiscard]] QSpinBox* fine() const { return fine_; }

signals:
  void refused(const QString& sentence);

protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

private:
  QSpinBox* add_step(const QString& name, int geometry::AnswerSettings::*setting);
  void change(const QString& what, const std::function<void(geometry::AnswerSettings&)>& edit);

  Session& session_;
  Choice *counted_, *rule_;
  QSpinBox *step_, *fine_;
};

}  // namespace scalpmark::window
