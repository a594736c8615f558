#include "viewer/window/jobs/course_check.h"

namespace scalpmark::window {

namespace {

constexpr int visits_at_rest_ms = 100;

}  // namespace

CourseCheck::CourseCheck(QObject* parent) : QObject(parent), work_(visits_at_rest_ms) {
  connect(&work_, &LatestWork::failed, this, [this](const QString& sentence) {
    problem_ = sentence;
    emit changed();
  });
}

void CourseCheck::work_out(const geometry::Head& head, const models::CaseFile& case_file,
                           const geometry::Plan& plan) {
  geometry::Case asked = case_file.the_case;
  asked.label.clear();
  asked.answers = {};
  asked.errors = {};
  if (asked_ == asked && asked_head_->same_as(head)) return;
  asked_ = asked;
  asked_head_.emplace(head);
  problem_.clear();
  struct Made {
    std::shared_ptr<const geometry::CheckedCourse> course;
    std::shared_ptr<const viewer::CourseShown> shown;
  };
  const auto made = std::make_shared<Made>();
  work_.ask(
      [head, the_case = case_file.the_case, plan, made](LatestWork::Job& job) {
        if (!the_case.visits.empty()) (void)head.fields([&job] { job.stop_if_cancelled(); });
        made->course = std::make_shared<const geometry::CheckedCourse>(
            the_case.visits.empty() ? geometry::CheckedCourse{}
                                    : geometry::check_course(geometry::TapeFinder(head), head, the_case, plan,
                                                             [&job] { job.stop_if_cancelled(); }));
        made->shown =
            std::make_shared<const viewer::CourseShown>(viewer::course_shown(*made->course, head, plan));
      },
      [this, made] {
        found_ = made->course;
        shown_ = made->shown;
        emit changed();
      });
  emit changed();
}

void CourseCheck::forget() {
  work_.give_up();
  asked_.reset();
  asked_head_.reset();
  found_.reset();
  shown_.reset();
  problem_.clear();
}

}  // namespace scalpmark::window
