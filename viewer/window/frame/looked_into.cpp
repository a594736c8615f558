#include "viewer/window/frame/looked_into.h"

#include <QTimer>
#include <utility>

namespace scalpmark::window {

using viewer::Thing;

LookedInto::LookedInto(Session& session, Worksheet& worksheet) : session_(session), worksheet_(worksheet) {
  for (GapPanel* panel : gap_panels()) connect(panel, &GapPanel::toggled, this, &LookedInto::set_gaps);
  connect(&under_coil_, &CoilContact::changed, this, [this] {
    emit changed();
    bring_line_into_sight();
  });
  connect_tolerance();
  connect(&session_, &Session::head_changed, this, [this] {
    under_coil_.stop_looking();
    by_hand_.forget();
  });
}

void LookedInto::connect_tolerance() {
  TolerancePanel* panel = worksheet_.check()->tolerance();
  connect(panel, &TolerancePanel::wanted, this, &LookedInto::changed);
  connect(panel, &TolerancePanel::stopped, this, [this] { by_hand_.give_up(); });
  connect(panel, &TolerancePanel::again, this, [this] {
    by_hand_.forget();
    emit changed();
  });
  // Queued: it may begin while the stage is being brought up to date.
  connect(
      &by_hand_, &HandTolerance::changed, this,
      [this, panel] {
        panel->show_tolerance(by_hand_);
        worksheet_.check()->show_by_hand(by_hand_.found());
        if (by_hand_.found()) emit changed();
      },
      Qt::QueuedConnection);
}

std::array<GapPanel*, 2> LookedInto::gap_panels() const {
  return {worksheet_.site()->gaps(), worksheet_.check()->gaps()};
}

void LookedInto::bring_line_into_sight() {
  if (!std::exchange(gaps_asked_, false)) return;
  GapPanel* asked = worksheet_.current() == Worksheet::site_index    ? worksheet_.site()->gaps()
                    : worksheet_.current() == Worksheet::check_index ? worksheet_.check()->gaps()
                                                                     : nullptr;
  QTimer::singleShot(0, this, [this, asked] {
    if (asked && asked->isVisible()) worksheet_.ensureWidgetVisible(asked, 0, 12);
  });
}

void LookedInto::set_gaps(bool on) {
  if (on == gaps_) return;
  gaps_ = gaps_asked_ = on;
  emit gaps_switched(on);
  if (!on) under_coil_.stop_looking();
  for (GapPanel* panel : gap_panels()) panel->set_on(on);
  emit changed();
}

void LookedInto::set_field(bool on) {
  if (on == std::exchange(field_, on)) return;
  emit field_switched(on);
  emit changed();
}

void LookedInto::add_field_to(StageContent& content) {
  viewer::Shown& shown = content.shown;
  const bool for_staff = field_ && content.for_work && shown.has(Thing::coil);
  const bool for_patient = shown.under_coil == viewer::UnderCoil::lit && shown.cortex;
  if (!for_staff && !for_patient) return;
  if (for_staff) shown.things.insert(Thing::field);
  shown.field = field_under_coil_.look_under(
      session_.head().head, shown.has(Thing::cortex) ? shown.cortex : nullptr,
      session_.case_file().the_case.coil.model, viewer::placement_shown(session_.plan(), shown));
  if (for_patient && shown.field) emit patch_lit(shown.field->map.half.area_cm2);
}

void LookedInto::add_to(StageContent& content) {
  const geometry::Head& head = session_.head().head;
  viewer::Shown& shown = content.shown;
  if (gaps_ && content.for_work && shown.has(Thing::coil)) {
    under_coil_.look_under(head, session_.case_file().the_case,
                           viewer::placement_shown(session_.plan(), shown));
    shown.things.insert(Thing::gaps);
    shown.gaps = under_coil_.gaps();
    for (GapPanel* panel : gap_panels()) panel->show_contact(under_coil_);
  }
  add_field_to(content);
  if (!content.off_by_hand) return;
  by_hand_.work_out(head, session_.case_file(), session_.plan());
  if (shown.has(Thing::tolerance) || shown.has(Thing::way_marks)) shown.tolerance = by_hand_.found();
}

}  // namespace scalpmark::window
