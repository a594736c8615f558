#pragma once

#include <memory>
#include <optional>

#include "geometry/answers/course.h"
#include "models/cases/case_file.h"
#include "viewer/stage/scene/shown.h"
#include "viewer/window/jobs/latest_work.h"

namespace scalpmark::window {

/// The course of the case's visits, each checked against the plan; worked out in a thread, with
/// the head's distance fields where they are not there yet.
class CourseCheck : public QObject {
  Q_OBJECT
public:
  explicit CourseCheck(QObject* parent = nullptr);

  /// Is wanted for this case; `changed` comes when it is there. The same again changes nothing.
  void work_out(const geometry::Head& head, const models::CaseFile& case_file, const geometry::Plan& plan);
  void forget();

  /// Nothing before the first is there; of the visits before, while another is worked out.
  [[nodiscard]] const std::shared_ptr<const geometry::CheckedCourse>& found() const { return found_; }
  [[nodiscard]] const std::shared_ptr<const viewer::CourseShown>& shown() const { return shown_; }
  [[nodiscard]] bool is_working() const { return work_.is_waiting(); }
  [[nodiscard]] const QString& problem() const { return problem_; }

signals:
  void changed();

private:
  LatestWork work_;
  std::optional<geometry::Case> asked_;
  std::optional<geometry::Head> asked_head_;
  std::shared_ptr<const geometry::CheckedCourse> found_;
  std::shared_ptr<const viewer::CourseShown> shown_;
  QString problem_;
};

}  // namespace scalpmark::window
