#pragma once

#include <QObject>
#include <QTimer>

#include "models/brain/template_brain.h"
#include "viewer/window/session/case_history.h"
#include "viewer/window/session/head_jobs.h"
#include "viewer/window/session/plan_in_force.h"

namespace scalpmark::window {

/// What the head in force gets after its plan, one after the other: the plan's tape distances unless they
/// were given up, then the template's brain and the distance fields where they are wanted. What is being
/// loaded comes first; what comes of it is handed to the plan in force and to the remembered heads.
class HeadExtras : public QObject {
  Q_OBJECT
public:
  HeadExtras(PlanInForce& in_force, HeadCache& heads, HeadJobs& jobs, const CaseHistory& history,
             QObject* parent = nullptr);

  /// Nothing was given up or is wanted yet on another head.
  void start_over() { tapes_given_up_ = fields_wanted_ = cortex_wanted_ = false; }
  /// Sees to the next thing that is lacking, if nothing else is under way.
  void go_on();
  /// The same once no edit has come for a moment: whoever turns a wheel waits for the last number only.
  void go_on_soon();
  [[nodiscard]] bool goes_on_soon() const { return soon_.isActive(); }

  void work_out_tapes();
  void want_fields();
  [[nodiscard]] bool fields_are_wanted() const { return fields_wanted_; }
  void want_cortex();
  /// Gives up what is under way (see Session::cancel).
  void cancel();
  /// A head was loaded or measured to the end.
  void head_is_prepared(const HeadJob& job);

  void set_template_files(models::TemplateFiles files) { template_files_ = std::move(files); }
  [[nodiscard]] const models::TemplateFiles& template_files() const { return template_files_; }

signals:
  /// The plan or the head in force has something more, or has given it up.
  void changed();
  void no_cortex(const QString& sentence);

private:
  void measured();
  void fields_are_there();
  void cortex_is_there(const HeadJob& job);

  PlanInForce& in_force_;
  HeadCache& heads_;
  HeadJobs& jobs_;
  const CaseHistory& history_;
  bool tapes_given_up_ = false, fields_wanted_ = false, cortex_wanted_ = false;
  models::TemplateFiles template_files_;
  QTimer soon_;
};

}  // namespace scalpmark::window
