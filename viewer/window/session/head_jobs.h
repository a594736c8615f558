#pragma once

#include <QObject>
#include <QString>
#include <functional>
#include <memory>
#include <vector>

#include "viewer/window/jobs/head_job.h"

namespace scalpmark::window {

/// The one job about a head that is listened to. One that was ended is not heard of any more; its thread ends
/// in its own time.
class HeadJobs : public QObject {
  Q_OBJECT
public:
  using QObject::QObject;

  /// A job to be set to work, where there is none. `finished` is called when it is, unless it was ended.
  HeadJob& begin(const QString& what, std::function<void(const HeadJob&)> finished);
  [[nodiscard]] const HeadJob* current() const { return job_.get(); }
  /// Ends the job, if there is one.
  void end();

signals:
  void working(const QString& what, double fraction);
  /// No work is under way any more.
  void rested();
  // Of the current job (see HeadJob):
  void laid();
  void measured();
  void failed(const QString& sentence);

private:
  std::unique_ptr<HeadJob> job_;
  std::vector<std::unique_ptr<HeadJob>> ended_;  // their threads still ending
};

}  // namespace scalpmark::window
