#include "viewer/window/frame/stage_director.h"

#include <utility>

#include "geometry/plan/other_side.h"
#include "viewer/window/frame/status_line.h"
#include "viewer/words/head_text.h"

namespace scalpmark::window {

using viewer::Thing;

namespace {

constexpr double small_print = 0.45;  // of letters that are read from the back of a room

}  // namespace

StageDirector::StageDirector(Session& session, CoilOnStage& coil, StageView& stage, Menus& menus,
                             ThroughSkin& through_skin, LookedInto& looked_into)
    : session_(session),
      coil_(coil),
      stage_(stage),
      menus_(menus),
      through_skin_(through_skin),
      looked_into_(looked_into) {
  connect(&coil_, &CoilOnStage::laid, this, &StageDirector::refresh_stage);
  connect(&looked_into_, &LookedInto::changed, this, &StageDirector::refresh_stage);
  connect(&menus_, &Menus::field, &looked_into_, &LookedInto::set_field);
  connect(&looked_into_, &LookedInto::field_switched, &menus_, &Menus::show_field);
  connect(&menus_, &Menus::readings_switched, this, &StageDirector::refresh_stage);
  connect(&through_skin_, &ThroughSkin::changed, this, [this] {
    menus_.show_skin_opacity(through_skin_.opacity());
    refresh_stage();
  });
}

void StageDirector::set_content(Mode mode, std::function<StageContent()> content) {
  content_[static_cast<std::size_t>(mode)] = std::move(content);
}

void StageDirector::set_own_stage(Mode mode, OwnStage own) {
  own_[static_cast<std::size_t>(mode)] = std::move(own);
}

void StageDirector::dress(StageContent& content) {
  viewer::Shown& shown = content.shown;
  shown.in_hand =
      shown.has(Thing::coil) && shown.coil_on == viewer::CoilOn::elsewhere && content.coil_follows_hand;
  if (mode_ != Mode::explain)  // no jargon for a patient
    shown.head_description = viewer::head_in_words(session_.case_file(), session_.head());
  if (projected_) shown.caution_share = small_print;
  if (content.for_work && shown.has(Thing::coil) && !projected_) {
    if (menus_.numbers()) shown.things.insert(Thing::numbers);
    if (menus_.legend()) shown.things.insert(Thing::legend);
  }
  through_skin_.add_to(shown);
  shown.cortex = session_.head().cortex;
  looked_into_.add_to(content);
}

void StageDirector::refresh_stage() {
  if (session_.unplaced()) {
    emit status({});
    emit hand_shown(false);
    stage_.show_bare(*session_.unplaced());
    return;
  }
  if (own_now().refresh) {
    own_now().refresh();
    return;
  }
  if (!session_.is_ready()) return;
  stage_.set_thin_skin(session_.thin_skin());
  StageContent content = content_now();
  dress(content);
  const geometry::Plan& plan = session_.plan();
  stage_.show_plan(session_.head().head, session_.case_file().the_case, plan, content.shown);
  stage_.set_coil_movable(content.coil_follows_hand);
  emit hand_shown(content.shown.in_hand);
  if (!content.for_work) return;
  emit coil_shown(coil_.coil());
  const geometry::Placement& placement = viewer::placement_shown(plan, content.shown);
  std::optional<double> from_site_mm;
  if (content.shown.coil_on == viewer::CoilOn::treatment ||
      content.shown.coil_on == viewer::CoilOn::elsewhere)
    from_site_mm = pulse_from_site_mm(session_.head().head.skin(), plan, placement);
  emit status(status_line(from_site_mm, viewer::where_shown(content.shown), placement,
                          session_.case_file().the_case.coil.laid_by));
}

void StageDirector::switch_side() {
  const geometry::Side now = session_.case_file().the_case.side;
  (void)session_.change(tr("Side"), [now](models::CaseFile& case_file) {
    geometry::lay_on_side(case_file.the_case,
                          now == geometry::Side::left ? geometry::Side::right : geometry::Side::left);
  });
}

void StageDirector::look() {
  if (own_now().look)
    own_now().look();
  else if (has_plan())
    stage_.look(content_now().look);
}

void StageDirector::refresh_and_look() {
  stage_.draw_once([this] {
    refresh_stage();
    look();
  });
}

void StageDirector::show_session(bool fresh_head) {
  bool across = false;
  if (session_.is_ready()) {
    const geometry::Side now = geometry::side_of(placement_of(session_.plan(), coil_.coil()));
    across = std::exchange(coil_side_, now).value_or(now) != now;
  }
  if (fresh_head || across)
    begin_step();
  else
    refresh_stage();
}

void StageDirector::begin_looking() {
  if (!has_plan()) return;
  emit begins();
  look();
}

void StageDirector::begin_step() {
  stage_.draw_once([this] {
    refresh_stage();
    begin_looking();
  });
}

}  // namespace scalpmark::window
