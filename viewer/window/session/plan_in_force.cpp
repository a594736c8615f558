#include "viewer/window/session/plan_in_force.h"

namespace scalpmark::window {

bool same_plan(models::CaseFile a, models::CaseFile b) {
  a.entered.label.clear();
  b.entered.label.clear();
  a.entered.errors = b.entered.errors = {};
  return models::case_json(a) == models::case_json(b);
}

}  // namespace scalpmark::window
