#include "viewer/window/session/plan_in_force.h"

namespace scalpmark::window {

bool same_plan(models::CaseFile a, models::CaseFile b) {
  a.entered.label.clear();
  b.entered.label.clear();
  a.entered.errors = b.entered.errors = {};
  return a.head == b.head && a.folder == b.folder && a.entered == b.entered;
}

}  // namespace scalpmark::window
