#include "viewer/window/session/plan_in_force.h"

namespace scalpmark::window {

bool same_plan(models::CaseFile a, models::CaseFile b) {
  a.the_case.label.clear();
  b.the_case.label.clear();
  a.the_case.errors = b.the_case.errors = {};
  a.the_case.answers = b.the_case.answers = {};
  a.the_case.visits.clear();
  b.the_case.visits.clear();
  return a.head == b.head && a.folder == b.folder && a.the_case == b.the_case;
}

}  // namespace scalpmark::window
